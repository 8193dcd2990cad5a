export function NotHere() {
  return (
    <>
      <h1>There is no such page</h1>
      <p>
        <a href="/desk/">Your work</a> shows what you can do here.
      </p>
    </>
  );
}
