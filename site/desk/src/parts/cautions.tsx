/** The usual cautions for work under load; the method's own come first, the house's and the law's stand above both. */
export function Cautions({ ofMethod = [] }: { ofMethod?: readonly string[] }) {
  return (
    <aside class="caution" aria-label="Before you pull">
      <p>
        A line under load whips when it parts. Eye protection on, guard closed, gloves for loaded braid, nobody in line with the pull. Stay
        within the limits of the rig’s maker; your local rules stand above all of this.
      </p>
      {ofMethod.map((words) => (
        <p key={words}>{words}</p>
      ))}
    </aside>
  );
}
