// How large the files of a folder are, and what of them goes over the wire where a server compresses: MB as they are, by gzip, by brotli.
// `node site-sizes.mjs FOLDER`; small files are summed up only. Licences and demos are not needed for the first use.

import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, relative } from "node:path";
import { brotliCompressSync, gzipSync } from "node:zlib";

const SMALL = 100_000;
const root = process.argv[2];
const below = (folder) => readdirSync(folder).flatMap((name) => {
  const path = join(folder, name);
  return statSync(path).isDirectory() ? below(path) : [path];
});
const row = (name, sizes) => name.padEnd(32) + sizes.map((size) => (size / 1e6).toFixed(2).padStart(8)).join("");

const first = [0, 0, 0];
for (const path of below(root)) {
  const name = relative(root, path);
  const bytes = readFileSync(path);
  const sizes = [bytes.length, gzipSync(bytes, { level: 9 }).length, brotliCompressSync(bytes).length];
  if (!/^(licences|demo)/.test(name)) sizes.forEach((size, index) => { first[index] += size; });
  if (bytes.length > SMALL) console.log(row(name, sizes));
}
console.log(`${row("all for first use", first)}  MB: as it is, gzip, brotli`);
