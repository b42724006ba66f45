// The folder without a server behind it: offered by the simplest server of files, which writes down what it is asked for.

import { createServer } from "node:http";
import { readFileSync } from "node:fs";
import { extname, join, normalize } from "node:path";

export const site = () => {
  const named = process.env.ARCATA_SITE;
  if (!named) throw new Error("ARCATA_SITE does not name the folder to test");
  return named;
};

const KINDS = {
  ".html": "text/html; charset=utf-8", ".mjs": "text/javascript", ".js": "text/javascript", ".css": "text/css", ".svg": "image/svg+xml",
  ".wasm": "application/wasm", ".txt": "text/plain; charset=utf-8", ".webmanifest": "application/manifest+json",
};

const servers = new Set();

/** Offers the folder below a path of its own, as many hosts do. */
export async function offered() {
  const asked = [];
  const server = createServer((request, answer) => {
    const path = decodeURIComponent(new URL(request.url, "http://localhost").pathname);
    asked.push(path);
    const file = normalize(path.replace(/^\/arcata\//, "")).replace(/^(\.\.?[/\\])+/, "");
    try {
      if (!path.startsWith("/arcata/")) throw new Error("elsewhere");
      const name = file === "" || file === "." || file === "./" ? "index.html" : file;
      const bytes = readFileSync(join(site(), name));
      answer.writeHead(200, { "content-type": KINDS[extname(name)] ?? "application/octet-stream" });
      answer.end(bytes);
    } catch {
      answer.writeHead(404);
      answer.end();
    }
  });
  await new Promise((resolve) => server.listen(0, "127.0.0.1", () => resolve(undefined)));
  servers.add(server);
  return { address: `http://127.0.0.1:${server.address().port}/arcata/`, asked, close: () => server.close() };
}

export function closeAll() {
  for (const server of servers) {
    server.closeAllConnections();
    server.close();
  }
}

/** Numbers that anybody can draw again. @param {number} seed */
export function dice(seed) {
  let state = seed >>> 0;
  return (below) => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

/** A package (.mxl) around a score: a ZIP file whose files are stored as they are. */
export async function packaged(score) {
  const { crc32 } = await import("node:zlib");
  const files = [
    ["META-INF/container.xml", Buffer.from('<?xml version="1.0"?><container><rootfiles><rootfile full-path="score.musicxml"/></rootfiles></container>')],
    ["score.musicxml", score],
  ];
  const parts = [];
  const entries = [];
  let at = 0;
  for (const [name, bytes] of files) {
    const head = Buffer.alloc(30);
    head.writeUInt32LE(0x04034b50, 0);
    head.writeUInt16LE(20, 4);
    head.writeUInt32LE(crc32(bytes), 14);
    head.writeUInt32LE(bytes.length, 18);
    head.writeUInt32LE(bytes.length, 22);
    head.writeUInt16LE(name.length, 26);
    const entry = Buffer.alloc(46);
    entry.writeUInt32LE(0x02014b50, 0);
    entry.writeUInt16LE(20, 4);
    entry.writeUInt16LE(20, 6);
    head.copy(entry, 16, 14, 26);
    entry.writeUInt16LE(name.length, 28);
    entry.writeUInt32LE(at, 42);
    entries.push(entry, Buffer.from(name));
    parts.push(head, Buffer.from(name), bytes);
    at += 30 + name.length + bytes.length;
  }
  const directory = Buffer.concat(entries);
  const end = Buffer.alloc(22);
  end.writeUInt32LE(0x06054b50, 0);
  end.writeUInt16LE(files.length, 8);
  end.writeUInt16LE(files.length, 10);
  end.writeUInt32LE(directory.length, 12);
  end.writeUInt32LE(at, 16);
  return Buffer.concat([...parts, directory, end]);
}
