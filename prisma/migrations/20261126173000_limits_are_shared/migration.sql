-- How much a network asked of all servers together in its present minute. Not part of the record: lost in a crash, and in no backup.
CREATE UNLOGGED TABLE "request_count" (
    "network" TEXT NOT NULL,
    "began_at" TIMESTAMPTZ(3) NOT NULL,
    "requests" INTEGER NOT NULL,

    CONSTRAINT "request_count_pkey" PRIMARY KEY ("network")
);
