/** What the script inside a release uses and Node 20 has not yet. */

function groupBy<Key, Item>(items: Iterable<Item>, keyOf: (item: Item, index: number) => Key): Map<Key, Item[]> {
  const groups = new Map<Key, Item[]>();
  let index = 0;
  for (const item of items) {
    const key = keyOf(item, index++);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return groups;
}

if (!Object.hasOwn(Map, 'groupBy')) Map.groupBy = groupBy;
