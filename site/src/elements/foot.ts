/** On paper a page says where it is from; one with figures of a release says of which (pass-on.ts). */
if (!document.querySelector('pass-on')) {
  const address = document.querySelector<HTMLLinkElement>('link[rel=canonical]')?.href ?? location.href;
  document.documentElement.style.setProperty('--foot', JSON.stringify(`${document.title}. ${address}`));
}
