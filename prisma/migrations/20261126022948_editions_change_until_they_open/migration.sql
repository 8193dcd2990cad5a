-- AlterTable
ALTER TABLE "edition" ADD COLUMN     "closed_on" DATE;

-- CreateTable
CREATE TABLE "edition_amendment" (
    "id" UUID NOT NULL,
    "edition_id" UUID NOT NULL,
    "reason" TEXT NOT NULL,
    "changes" JSONB NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "edition_amendment_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "edition_amendment_edition_id_idx" ON "edition_amendment"("edition_id");

-- AddForeignKey
ALTER TABLE "edition_amendment" ADD CONSTRAINT "edition_amendment_edition_id_fkey" FOREIGN KEY ("edition_id") REFERENCES "edition"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

ALTER TABLE "edition_amendment" ADD CONSTRAINT "amendment_has_a_reason" CHECK (length(trim("reason")) > 0);
CREATE TRIGGER "edition_amendment_is_append_only" BEFORE UPDATE OR DELETE ON "edition_amendment" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "edition_amendment_is_not_emptied" BEFORE TRUNCATE ON "edition_amendment" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
ALTER TABLE "edition" ADD CONSTRAINT "only_a_closed_edition_has_closed" CHECK ("closed_on" IS NULL OR "state" IN ('closed', 'published'));

-- Nothing rests on a planned edition: it goes away with what was planned of it. Once it opens, it stays, and so do its entries and methods.
CREATE FUNCTION "only_a_planned_edition_is_deleted"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> 'planned' THEN
    RAISE EXCEPTION 'only_a_planned_edition_is_deleted: an edition that opened stays on record' USING ERRCODE = 'FP001';
  END IF;
  RETURN OLD;
END $$;
CREATE TRIGGER "only_a_planned_edition_is_deleted" BEFORE DELETE ON "edition" FOR EACH ROW EXECUTE FUNCTION "only_a_planned_edition_is_deleted"();

CREATE FUNCTION "part_of_an_opened_edition_stays"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "edition" e WHERE e."id" = OLD."edition_id" AND e."state" <> 'planned') THEN
    RAISE EXCEPTION 'part_of_an_opened_edition_stays: entries and methods of an edition that opened are not taken out' USING ERRCODE = 'FP001';
  END IF;
  RETURN OLD;
END $$;
CREATE TRIGGER "part_of_an_opened_edition_stays" BEFORE DELETE ON "entry" FOR EACH ROW EXECUTE FUNCTION "part_of_an_opened_edition_stays"();
CREATE TRIGGER "part_of_an_opened_edition_stays" BEFORE DELETE ON "edition_method" FOR EACH ROW EXECUTE FUNCTION "part_of_an_opened_edition_stays"();
DROP TRIGGER "edition_method_is_append_only" ON "edition_method";
CREATE TRIGGER "edition_method_is_append_only" BEFORE UPDATE ON "edition_method" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();

CREATE FUNCTION "closed_edition_takes_nothing_more"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "edition" e WHERE e."id" = NEW."edition_id" AND e."state" IN ('closed', 'published')) THEN
    RAISE EXCEPTION 'closed_edition_takes_nothing_more: an edition that closed takes no further entry, method or amendment' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "closed_edition_takes_nothing_more" BEFORE INSERT ON "entry" FOR EACH ROW EXECUTE FUNCTION "closed_edition_takes_nothing_more"();
CREATE TRIGGER "closed_edition_takes_nothing_more" BEFORE INSERT ON "edition_method" FOR EACH ROW EXECUTE FUNCTION "closed_edition_takes_nothing_more"();
CREATE TRIGGER "closed_edition_takes_nothing_more" BEFORE INSERT ON "edition_amendment" FOR EACH ROW EXECUTE FUNCTION "closed_edition_takes_nothing_more"();

CREATE FUNCTION "days_of_an_edition_stand"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> 'planned' AND (OLD."slug", OLD."name", OLD."opens_on", OLD."previous_id") IS DISTINCT FROM (NEW."slug", NEW."name", NEW."opens_on", NEW."previous_id") THEN
    RAISE EXCEPTION 'days_of_an_edition_stand: name, opening day and the edition before are fixed when an edition opens' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> 'planned' AND OLD."closes_on" <> NEW."closes_on" AND (OLD."state" <> 'open' OR NEW."closes_on" < OLD."closes_on") THEN
    RAISE EXCEPTION 'days_of_an_edition_stand: the closing day of an open edition only moves later' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> 'open' AND OLD."closed_on" IS DISTINCT FROM NEW."closed_on" THEN
    RAISE EXCEPTION 'days_of_an_edition_stand: the day on which an edition closed never changes' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "days_of_an_edition_stand" BEFORE UPDATE ON "edition" FOR EACH ROW EXECUTE FUNCTION "days_of_an_edition_stand"();
