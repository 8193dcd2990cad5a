/** One field of a form. */
export interface FieldOptions {
  /** Place in the request, e.g. "printed/text". */
  readonly name: string;
  readonly label: string;
  readonly kind?: 'text' | 'email' | 'password' | 'date' | 'moment' | 'number' | 'decimal' | 'reading' | 'words' | 'choice' | 'several';
  readonly value?: string;
  /** Of a choice: what is sent → what is read; of several also what folds those of a kind, which are ticked together or one by one. */
  readonly options?: readonly (readonly [sent: string, read: string, foldedIn?: string])[];
  /** Of several: what is ticked at first. */
  readonly ticked?: readonly string[];
  /** What is on record already, offered while one types; anything else may be typed. */
  readonly known?: readonly string[];
  readonly hint?: string;
  readonly autocomplete?: string;
  /** Sent as null when it is left empty. */
  readonly isOptional?: boolean;
  readonly hasFocus?: boolean;
  /** It holds for many in a row: folded where it is known, and not emptied for the next. */
  readonly isStanding?: boolean;
}
