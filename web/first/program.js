"use strict";
// Fetches the program in the fewest bytes that the host allows, in place of
// go-app's own way, and begins before go-app is there. Where the host sends it as
// it is, three to four times as large, the packed copy beside it is fetched and
// unpacked here. That is known once the head of the first answer is there, so a
// host that does compress is asked nothing more, and one that does not has sent
// some packets in vain.
(() => {
  const roofside = (window.roofside ??= {});

  // program is the file's address, its size in bytes, the packed copy's size and
  // digest, as the worker knows them.
  let program, asked;
  const stop = new AbortController();
  roofside.begin = (its) => {
    program = its;
    asked = found(program.address, { signal: stop.signal });
    asked.catch(() => {}); // who awaits it below is told
  };

  // show is told the progress in per cent.
  roofside.program = async (show) => {
    const plain = await asked;
    if (self.origin !== "null" && navigator.serviceWorker?.controller) { // off the device, by the worker
      show(100);
      return plain;
    }
    if (packed(plain)) return answer(plain.body.pipeThrough(counter(program.size, show)));
    stop.abort();
    const small = await found(program.address + ".gz").catch(() => null);
    if (!small) return answer((await found(program.address)).body.pipeThrough(counter(program.size, show)));
    // Some hosts take the ending for a form of sending, and the browser unpacks.
    if (small.headers.has("Content-Encoding")) return answer(small.body.pipeThrough(counter(program.size, show)));
    return answer(small.body
      .pipeThrough(counter(program.packedSize, show))
      .pipeThrough(proof(program.packed))
      .pipeThrough(new DecompressionStream("gzip")));
  };

  async function found(address, more) {
    const answer = await fetch(address, more);
    if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
    return answer;
  }

  // packed tells whether an answer comes in few bytes, or can't come in fewer. A
  // frame that is sandboxed without its origin may not read the head, and takes what
  // comes.
  function packed(answer) {
    const length = answer.headers.get("Content-Length");
    return self.origin === "null" || answer.headers.has("Content-Encoding") || length !== null && Number(length) < program.size ||
      typeof DecompressionStream === "undefined";
  }

  // The type is said here because not every host knows it.
  const answer = (body) => new Response(body, { headers: { "Content-Type": "application/wasm" } });

  function counter(size, show) {
    let come = 0;
    return new TransformStream({
      transform(chunk, out) {
        come += chunk.byteLength;
        show(Math.floor((100 * come) / size));
        out.enqueue(chunk);
      },
    });
  }

  // proof ends the stream only if all of it together has the digest. Until then
  // the browser compiles but nothing runs. Without TLS the browser lends no
  // digest; the sum in the packed file still finds what was cut or damaged.
  function proof(digest) {
    const chunks = [];
    return new TransformStream({
      transform(chunk, out) {
        chunks.push(chunk);
        out.enqueue(chunk);
      },
      async flush() {
        if (!crypto.subtle) return;
        const sum = await crypto.subtle.digest("SHA-256", await new Blob(chunks).arrayBuffer());
        if ("sha256-" + btoa(String.fromCharCode(...new Uint8Array(sum))) !== digest) throw new Error("The host holds two versions. Reload in a moment.");
      },
    });
  }
})();
