/** Who sits here. The cookie is the server's; beside it the device keeps the token that every change carries, and who signed in last. */
const TOKEN = 'desk.csrf';
const EMAIL = 'desk.email';

export const csrfToken = (): string => localStorage.getItem(TOKEN) ?? '';
export const lastEmail = (): string => localStorage.getItem(EMAIL) ?? '';

export function keepSession(token: string, email: string): void {
  localStorage.setItem(TOKEN, token);
  localStorage.setItem(EMAIL, email);
}

export function forgetSession(): void {
  localStorage.removeItem(TOKEN);
  localStorage.removeItem(EMAIL);
}
