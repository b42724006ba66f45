// The engraving library's own WebAssembly module, one toolkit of it: orders in, drawings out.

/** The first thing that a toolkit reads; as in the installed program, so that both count alike from then on. */
const FIRST_READ = '<score-partwise version="4.0"><part-list><score-part id="P1"><part-name/></score-part></part-list>' +
  '<part id="P1"><measure number="1"><attributes><divisions>1</divisions></attributes>' +
  '<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration>' +
  '<type>quarter</type><accidental>sharp</accidental></note>' +
  '<note><pitch><step>F</step><alter>1</alter><octave>4</octave></pitch><duration>1</duration>' +
  '<type>quarter</type></note></measure></part></score-partwise>';

/**
 * @param {(options?: any) => Promise<any>} createModule what the library's package exports
 * @returns {Promise<(order: {options: string, musicxml: string}) => string | null>}
 */
export async function toolkit(createModule) {
  const library = await createModule();
  const call = (/** @type {string} */ name, /** @type {string | null} */ gives, /** @type {string[]} */ takes) => library.cwrap(`vrvToolkit_${name}`, gives, takes);
  library.cwrap("enableLog", null, ["number"])(0);
  const own = call("constructor", "number", [])();
  const setOptions = call("setOptions", "number", ["number", "string"]);
  const resetIds = call("resetXmlIdSeed", null, ["number", "number"]);
  const loadData = call("loadData", "number", ["number", "string"]);
  const render = call("renderToSVG", "string", ["number", "number", "number"]);
  loadData(own, FIRST_READ);
  return ({ options, musicxml }) => {
    if (!setOptions(own, options)) return null;
    // Ids that the library makes up are counted from the same number each time.
    resetIds(own, 1);
    if (!loadData(own, musicxml)) return null;
    return render(own, 1, 0) || null;
  };
}
