// A plain script, for browsers that cannot read the others: says so instead of showing an empty page.
(function () {
  "use strict";
  var simd = new Uint8Array([0, 97, 115, 109, 1, 0, 0, 0, 1, 5, 1, 96, 0, 1, 123, 3, 2, 1, 0, 10, 10, 1, 8, 0, 65, 0, 253, 15, 253, 98, 11]);
  var able = typeof WebAssembly === "object" && WebAssembly.validate && WebAssembly.validate(simd) &&
    typeof WebAssembly.compileStreaming === "function" && typeof HTMLDialogElement === "function" && typeof structuredClone === "function";
  if (able) return;
  var words = {
    en: "This browser is too old for this page. Chromium or Firefox of 2023 or newer and Safari 17 or newer can show it; nothing of yours was touched.",
    it: "Questo browser è troppo vecchio per questa pagina. La mostrano Chromium o Firefox dal 2023 in poi e Safari da 17 in poi; dei vostri file nulla è stato toccato.",
    fr: "Ce navigateur est trop ancien pour cette page. Chromium ou Firefox à partir de 2023 et Safari à partir de 17 l’affichent ; rien de vos fichiers n’a été touché.",
    de: "Dieser Browser ist zu alt für diese Seite. Chromium oder Firefox ab 2023 und Safari ab 17 zeigen sie; von Ihren Dateien wurde nichts berührt."
  };
  var show = function () {
    var line = document.createElement("p");
    line.setAttribute("role", "alert");
    line.style.padding = "2rem";
    line.textContent = words[(navigator.language || "en").slice(0, 2)] || words.en;
    document.body.insertBefore(line, document.body.firstChild);
  };
  if (document.body) show(); else document.addEventListener("DOMContentLoaded", show);
})();
