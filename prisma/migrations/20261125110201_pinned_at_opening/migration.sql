-- What is sealed and pinned when an edition opens stays so; and what an editor saw at the last look.
ALTER TABLE "edition" ADD COLUMN "blind_key" TEXT, ADD COLUMN "check_set" JSONB;

CREATE TABLE "edition_preview" (
    "edition_id" UUID NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "cells" JSONB NOT NULL,
    CONSTRAINT "edition_preview_pkey" PRIMARY KEY ("edition_id", "by_id")
);
ALTER TABLE "edition_preview" ADD CONSTRAINT "edition_preview_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

CREATE FUNCTION "opening_stands"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> 'planned'
     AND (OLD."blind_key", OLD."check_set") IS DISTINCT FROM (NEW."blind_key", NEW."check_set") THEN
    RAISE EXCEPTION 'opening_stands: what was pinned when the edition opened never changes' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "opening_stands" BEFORE UPDATE ON "edition" FOR EACH ROW EXECUTE FUNCTION "opening_stands"();
