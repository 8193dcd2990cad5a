/** One question for the password at a time, whoever needs it; the page beneath stays as it is. */
type Asker = () => Promise<void>;

let asker: Asker = () => Promise.reject(new Error('Nobody is here to ask for the password.'));
let asked: Promise<void> | null = null;

export function setAsker(next: Asker): void {
  asker = next;
}

export function askPassword(): Promise<void> {
  asked ??= asker().finally(() => {
    asked = null;
  });
  return asked;
}
