/** An act as the record names it → words: "account.resetMade" → "account, reset made". */
export const actWords = (action: string): string => action.replace('.', ', ').replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
