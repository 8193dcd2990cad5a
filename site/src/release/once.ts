/** Makes something of a part of a document once, however many pages ask: with ten thousand variants they must not each go through it. */
export function once<Part extends object, Made>(make: (part: Part) => Made): (part: Part) => Made {
  const known = new WeakMap<Part, Made>();
  return (part) => {
    const made = known.get(part) ?? make(part);
    known.set(part, made);
    return made;
  };
}
