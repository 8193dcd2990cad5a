-- Running numbers of submission references, handed out by the edition's row: its lock makes them race-free, and a number never comes back.
ALTER TABLE "edition" ADD COLUMN "submissions_numbered" INTEGER NOT NULL DEFAULT 0;
ALTER TABLE "edition" ADD CONSTRAINT "submissions_numbered_is_a_count" CHECK ("submissions_numbered" >= 0);
