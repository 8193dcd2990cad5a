/**
 * What Node is told that runs the server. Room for young objects: rows of a long file live for a moment, and with a quarter of this, as
 * is usual, collecting them takes up to twice as long. tests/benchmarks/README.md says what it costs, docker-compose.yml says the same.
 */
export const SERVER_OPTIONS = ['--max-semi-space-size=64'] as const;
