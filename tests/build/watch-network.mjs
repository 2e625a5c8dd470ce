// Loaded before a program and each of its threads (NODE_OPTIONS=--import): writes every attempt to reach out, every name
// looked up, every address listened at and every program started into the file that STILLPLATE_NETWORK_LOG names.
// http, https, tls and fetch all connect by net.
import { appendFileSync } from 'node:fs';
import { syncBuiltinESMExports } from 'node:module';
import childProcess from 'node:child_process';
import dgram from 'node:dgram';
import dns from 'node:dns';
import net from 'node:net';

const say = (words) => appendFileSync(process.env.STILLPLATE_NETWORK_LOG, `${words}\n`);

function watch(on, name, words) {
  const own = on[name];
  on[name] = function (...args) {
    say(words(args));
    return own.apply(this, args);
  };
}

watch(net.Socket.prototype, 'connect', ([to]) => `connect ${JSON.stringify(to)}`);
watch(net.Server.prototype, 'listen', ([at, host]) => `listen ${typeof at === 'object' ? at.host : host}`);
for (const name of ['bind', 'connect', 'send']) watch(dgram.Socket.prototype, name, () => `datagram ${name}`);
for (const on of [dns, dns.promises, dns.Resolver.prototype, dns.promises.Resolver.prototype])
  for (const name of Object.getOwnPropertyNames(on).filter((each) => /^(lookup|resolve|reverse)/.test(each)))
    watch(on, name, ([host]) => `look up ${host}`);
watch(childProcess.ChildProcess.prototype, 'spawn', ([{ file }]) => `start ${file}`);
for (const name of ['spawnSync', 'execFileSync', 'execSync']) watch(childProcess, name, ([file]) => `start ${file}`);
syncBuiltinESMExports();
