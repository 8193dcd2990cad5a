/**
 * Loaded before a child program: ends it when the process that started it is gone.
 * The channel to the parent closes even when the parent is killed outright, which sends no signal.
 */
const END_WITHIN_MS = 15_000;

process.on('disconnect', () => {
  setTimeout(() => process.exit(1), END_WITHIN_MS).unref();
  process.kill(process.pid, 'SIGTERM');
});
// The open channel alone must not keep a finished program alive.
process.channel?.unref();
