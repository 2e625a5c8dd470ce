import { describe, expect, it } from 'vitest';
import { mergePatch } from '../../core/document/merge-patch.ts';

describe('differences on a value', () => {
  // The fifteen test cases of RFC 7396, appendix A: original, patch, result; from memory, most of them compared with public copies.
  it.each([
    ['{"a":"b"}', '{"a":"c"}', '{"a":"c"}'],
    ['{"a":"b"}', '{"b":"c"}', '{"a":"b","b":"c"}'],
    ['{"a":"b"}', '{"a":null}', '{}'],
    ['{"a":"b","b":"c"}', '{"a":null}', '{"b":"c"}'],
    ['{"a":["b"]}', '{"a":"c"}', '{"a":"c"}'],
    ['{"a":"c"}', '{"a":["b"]}', '{"a":["b"]}'],
    ['{"a":{"b":"c"}}', '{"a":{"b":"d","c":null}}', '{"a":{"b":"d"}}'],
    ['{"a":[{"b":"c"}]}', '{"a":[1]}', '{"a":[1]}'],
    ['["a","b"]', '["c","d"]', '["c","d"]'],
    ['{"a":"b"}', '["c"]', '["c"]'],
    ['{"a":"foo"}', 'null', 'null'],
    ['{"a":"foo"}', '"bar"', '"bar"'],
    ['{"e":null}', '{"a":1}', '{"e":null,"a":1}'],
    ['[1,2]', '{"a":"b","c":null}', '{"a":"b"}'],
    ['{}', '{"a":{"bb":{"ccc":null}}}', '{"a":{"bb":{}}}'],
  ])('RFC 7396, appendix A: %s with %s gives %s', (original, patch, result) => {
    const target: unknown = JSON.parse(original);
    expect(mergePatch(target, JSON.parse(patch))).toEqual(JSON.parse(result));
    expect(JSON.stringify(target)).toBe(original);
  });

  it('a member called like one of every object’s own is a member', () => {
    const result = mergePatch({}, JSON.parse('{"toString":{"a":1},"__proto__":{"polluted":true}}')) as Record<
      string,
      unknown
    >;
    expect(result['toString']).toEqual({ a: 1 });
    expect(Object.hasOwn(result, '__proto__')).toBe(true);
    expect(({} as Record<string, unknown>)['polluted']).toBeUndefined();
    expect(result['polluted']).toBeUndefined();
  });
});
