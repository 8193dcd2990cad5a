/** What an address names is open, and all that it is folded into: a link to a submission shows its readings. */
function openTarget(): void {
  const target = document.getElementById(decodeURIComponent(location.hash.slice(1)));
  if (!target) return;
  for (let one: Element | null = target; one; one = one.parentElement) if (one instanceof HTMLDetailsElement) one.open = true;
  target.scrollIntoView();
}

addEventListener('hashchange', openTarget);
openTarget();
