// Elements made in one breath.

/**
 * Makes an element.
 * @param {string} tag
 * @param {Record<string, any>} [properties] attributes; `on` + name for listeners, `text` for what it says
 * @param {...(Node | string | null | undefined | false)} children
 * @returns {any}
 */
export function make(tag, properties = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(properties)) {
    if (value === null || value === undefined || value === false) continue;
    if (name === "text") element.textContent = value;
    else if (name.startsWith("on")) element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  for (const child of children) if (child) element.append(child);
  return element;
}

const SVG = "http://www.w3.org/2000/svg";

/**
 * A picture that the server has drawn.
 * @param {{svg: string, width: number, height: number}} picture sizes in millimetres
 * @param {string} told what it shows, in words
 */
export function picture(picture, told) {
  const svg = document.createElementNS(SVG, "svg");
  svg.setAttribute("viewBox", `0 0 ${picture.width} ${picture.height}`);
  svg.setAttribute("role", "img");
  svg.setAttribute("aria-label", told);
  svg.style.color = "currentColor";
  svg.innerHTML = picture.svg;
  return svg;
}

/**
 * A dialog that closes with Escape or by its own button.
 * @param {string} title
 * @param {string} close what its button says
 * @param {...(Node | string | null | false)} children
 * @returns {HTMLDialogElement}
 */
export function dialog(title, close, ...children) {
  const box = make("dialog", { "aria-label": title },
    make("div", { class: "box-head" },
      make("h2", { text: title }),
      make("button", { type: "button", class: "quiet", "aria-label": close, onclick: () => box.close(), text: "✕" })),
    ...children.filter((child) => child));
  box.addEventListener("close", () => box.remove());
  document.body.append(box);
  box.showModal();
  return box;
}
