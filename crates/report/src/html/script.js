"use strict";
(() => {
  const choice = document.getElementById("choice");
  const leads = (address) => {
    const aim = address && document.getElementById(decodeURIComponent(address.slice(1)));
    if (aim instanceof HTMLDetailsElement) aim.open = true;
  };
  addEventListener("hashchange", () => leads(location.hash));
  leads(location.hash);
  if (!choice) return;
  const findings = [...document.querySelectorAll("article[data-finding]")];
  const spots = [...document.querySelectorAll(".spot[data-finding]")];
  const shown = document.getElementById("shown");
  const groups = ["weight", "section", "rule"];
  const show = () => {
    const wanted = groups.map((group) => new Set(
      [...choice.querySelectorAll(`input[name=${group}]:checked`)].map((input) => input.value)));
    const seen = new Set();
    for (const finding of findings) {
      const fits = groups.every((group, index) => wanted[index].has(finding.dataset[group]));
      finding.hidden = !fits;
      if (fits) seen.add(finding.dataset.finding);
    }
    for (const spot of spots) spot.hidden = !seen.has(spot.dataset.finding);
    shown.textContent = choice.dataset.shown.replace("#", seen.size).replace("#", findings.length);
  };
  choice.addEventListener("change", show);
  choice.addEventListener("submit", (event) => event.preventDefault());
  document.getElementById("all").addEventListener("click", () => {
    for (const input of choice.querySelectorAll("input")) input.checked = true;
    show();
  });
  choice.hidden = false;
  show();
})();
