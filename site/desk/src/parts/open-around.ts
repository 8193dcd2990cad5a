/** Opens whatever a part of the page is folded in. */
export function openAround(part: Element | null | undefined): void {
  for (let around = part?.closest('details'); around; around = around.parentElement?.closest('details')) around.open = true;
}
