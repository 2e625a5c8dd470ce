import { readFile } from 'node:fs/promises';
import { resolve } from 'node:path';
import type { Browser, Locator, Page } from 'playwright-core';
import { expect } from 'vitest';
import { documentHash } from '../../../core/document/document-hash.ts';
import { readDocumentText } from '../../../core/document/read-document.ts';
import { valueOf } from '../../../core/host/answer.ts';
import { stageOf, type SheetName } from '../../../renderer/state/stages.ts';
import { texts } from '../../../renderer/texts.ts';
import type { Served } from './served.ts';

/** The window in a browser, with what a person does in it. */
export interface Workbench {
  readonly page: Page;
  /** The sheet beside the plate. */
  readonly sheet: Locator;
  readonly open: (sheet: SheetName) => Promise<void>;
  /** A field of the open sheet by its label. */
  readonly field: (label: string) => Locator;
  /** Types into a field and leaves it. */
  readonly type: (label: string, text: string) => Promise<void>;
  /** Puts a sample into the store and opens it from the list, with its chosen option or as it stands; gives its id. */
  readonly openSample: (sample: 'small' | 'middle' | 'large' | 'inch', as?: 'chosen' | 'it stands') => Promise<string>;
  /** Puts the text of a document into the store and opens it from the list; gives its id. */
  readonly openText: (text: string) => Promise<string>;
  /** Goes back to the start page. */
  readonly allPlates: () => Promise<void>;
  /** Does something that changes the document, and waits until the store has acknowledged it and the window says so. */
  readonly kept: (id: string, act: () => Promise<unknown>) => Promise<void>;
  /** Hash of what the window holds: the file that it saves. */
  readonly hash: () => Promise<string>;
  /** Number that decides, as the headline prints it. */
  readonly deciding: () => Promise<string>;
  readonly close: () => Promise<void>;
}

/** How long anything may take on a machine that is busy. */
const patience = 180_000;

/**
 * Opens the window in a browser of its own (no cookies of another). Closing it fails where anything went against the
 * content policy, was thrown and not caught, was said as an error on the console, or was asked of another address than the
 * program's own. `excused`: what the journey itself brought about.
 */
export async function openWorkbench(
  browser: Browser,
  served: Served,
  excused: RegExp | null = null,
): Promise<Workbench> {
  const context = await browser.newContext({
    viewport: { width: 1440, height: 900 },
    reducedMotion: 'reduce',
    acceptDownloads: true,
  });
  const page = await context.newPage();
  page.setDefaultTimeout(patience);
  const found = await watch(page, new URL(served.address).origin);
  const sheet = page.locator('.sheet');
  const field = (label: string): Locator => sheet.getByLabel(label, { exact: true }).first();
  const openText = async (text: string): Promise<string> => {
    const { name } = (JSON.parse(text) as { project: { name: string } }).project;
    const { id } = valueOf(await served.host.createDocument({ name, text, file: null }));
    await page.goto(served.address);
    await page.locator('.recent button.name', { hasText: name }).first().click();
    await page.getByText(texts.headline.decides).waitFor();
    return id;
  };
  await page.goto(served.address);

  return {
    page,
    sheet,
    field,
    open: async (name) => {
      await page.getByRole('button', { name: texts.stages[stageOf(name)], exact: true }).click();
      await page.getByRole('button', { name: texts.sheets[name], exact: true }).first().click();
    },
    type: async (label, text) => {
      await field(label).fill(text);
      await field(label).press('Enter');
    },
    openText,
    openSample: async (sample, as = 'chosen') => {
      const file = await readFile(resolve(`samples/${sample}.stillplate.json`), 'utf8');
      return openText(as === 'chosen' ? file : JSON.stringify({ ...(JSON.parse(file) as object), chosen: null }));
    },
    allPlates: async () => {
      await page.getByRole('button', { name: texts.headline.home }).click();
      await page.getByRole('heading', { name: texts.start.samples }).waitFor();
    },
    kept: async (id, act) => {
      const head = async (): Promise<number> => (await served.documents()).find((each) => each.id === id)!.head;
      const before = await head();
      await act();
      await expect.poll(head, { timeout: patience }).toBeGreaterThan(before);
      await page.getByText(texts.headline.kept).waitFor();
    },
    hash: async () => {
      await page.keyboard.press('Control+s');
      const download = page.waitForEvent('download');
      await page.getByRole('button', { name: texts.history.saveFile }).click();
      const text = await textOf((await download).createReadStream());
      await page.locator('dialog').getByRole('button', { name: texts.dialog.close, exact: true }).click();
      return documentHash(readDocumentText(text));
    },
    deciding: async () => (await page.locator('.deciding strong').textContent()) ?? '',
    close: async () => {
      await context.close();
      expect(found.filter((each) => !excused?.test(each))).toEqual([]);
    },
  };
}

/** Gathers everything that may not happen in a page. */
async function watch(page: Page, origin: string): Promise<readonly string[]> {
  const found: string[] = [];
  // Requests of the page's workers come by the context.
  page.context().on('request', (request) => {
    const url = new URL(request.url());
    if (!['blob:', 'data:'].includes(url.protocol) && url.origin !== origin)
      found.push(`reached out: ${request.url()}`);
  });
  page.on('websocket', (socket) => found.push(`reached out: ${socket.url()}`));
  page.on('pageerror', (error) => found.push(`thrown: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error') found.push(`console: ${message.text()}`);
  });
  await page.exposeFunction('tellViolation', (words: string) => found.push(`policy: ${words}`));
  await page.addInitScript(
    `document.addEventListener('securitypolicyviolation', (event) => window.tellViolation(event.violatedDirective + ' ' + event.blockedURI));`,
  );
  return found;
}

export async function textOf(stream: Promise<NodeJS.ReadableStream>): Promise<string> {
  return Buffer.concat(await bytesOf(stream)).toString('utf8');
}

export async function bytesOf(stream: Promise<NodeJS.ReadableStream>): Promise<readonly Buffer[]> {
  const parts: Buffer[] = [];
  for await (const part of await stream) parts.push(part as Buffer);
  return parts;
}
