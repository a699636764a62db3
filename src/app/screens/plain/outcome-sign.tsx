export function OutcomeSign({ outcome }: { outcome: string }) {
  return (
    <span aria-hidden="true" data-outcome={outcome}>
      ◦
    </span>
  );
}
