-- AlterTable
ALTER TABLE "line" ADD COLUMN     "retired_on" DATE,
ADD COLUMN     "retired_reason" TEXT;

-- AlterTable
ALTER TABLE "maker" ADD COLUMN     "retired_on" DATE,
ADD COLUMN     "retired_reason" TEXT;

-- AlterTable
ALTER TABLE "variant" ADD COLUMN     "retired_on" DATE,
ADD COLUMN     "retired_reason" TEXT;

-- CreateTable
CREATE TABLE "superseded_row" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "object_id" UUID NOT NULL,
    "was" JSONB NOT NULL,
    "reason" TEXT NOT NULL,
    "rested" JSONB NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "superseded_row_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "superseded_row_object_id_idx" ON "superseded_row"("object_id");


ALTER TABLE "superseded_row"
  ADD CONSTRAINT "superseded_kind_is_known" CHECK ("kind" IN ('maker', 'line', 'variant', 'claim', 'spool', 'calibration')),
  ADD CONSTRAINT "superseding_has_a_reason" CHECK (length(trim("reason")) > 0);
ALTER TABLE "maker" ADD CONSTRAINT "retired_maker_says_why" CHECK (("retired_on" IS NULL) = ("retired_reason" IS NULL));
ALTER TABLE "line" ADD CONSTRAINT "retired_line_says_why" CHECK (("retired_on" IS NULL) = ("retired_reason" IS NULL));
ALTER TABLE "variant" ADD CONSTRAINT "retired_variant_says_why" CHECK (("retired_on" IS NULL) = ("retired_reason" IS NULL));
CREATE TRIGGER "superseded_row_is_append_only" BEFORE UPDATE OR DELETE ON "superseded_row" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "superseded_row_is_not_emptied" BEFORE TRUNCATE ON "superseded_row" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- What a submission rests on changes only where, in the same transaction, what it said is kept beside it with the reason.
CREATE FUNCTION "what_rests_is_superseded"() RETURNS trigger LANGUAGE plpgsql AS $$
DECLARE
  is_resting boolean;
  besides text[] := ARRAY['version', 'retired_on', 'retired_reason', 'variant_id'];
BEGIN
  IF to_jsonb(OLD) - besides = to_jsonb(NEW) - besides THEN RETURN NEW; END IF;
  is_resting := CASE TG_TABLE_NAME
    WHEN 'maker' THEN EXISTS (SELECT 1 FROM "submission" s JOIN "spool" p ON p."id" = s."spool_id" JOIN "variant" v ON v."id" = p."variant_id"
      JOIN "line" l ON l."id" = v."line_id" WHERE l."maker_id" = OLD."id" AND s."revision" > 0)
    WHEN 'line' THEN EXISTS (SELECT 1 FROM "submission" s JOIN "spool" p ON p."id" = s."spool_id" JOIN "variant" v ON v."id" = p."variant_id"
      WHERE v."line_id" = OLD."id" AND s."revision" > 0)
    WHEN 'variant' THEN EXISTS (SELECT 1 FROM "submission" s JOIN "spool" p ON p."id" = s."spool_id" WHERE p."variant_id" = OLD."id" AND s."revision" > 0)
    WHEN 'claim' THEN EXISTS (SELECT 1 FROM "submission" s JOIN "spool" p ON p."id" = s."spool_id"
      WHERE p."variant_id" = (to_jsonb(OLD) ->> 'variant_id')::uuid AND s."revision" > 0)
    WHEN 'spool' THEN EXISTS (SELECT 1 FROM "submission" s WHERE s."spool_id" = OLD."id" AND s."revision" > 0)
    ELSE EXISTS (SELECT 1 FROM "submission_instrument" i WHERE i."instrument_id" = (to_jsonb(OLD) ->> 'instrument_id')::uuid
      AND i."certificate" = to_jsonb(OLD) ->> 'certificate')
  END;
  IF is_resting AND TG_TABLE_NAME = 'calibration'
     AND (to_jsonb(OLD) -> 'certificate', to_jsonb(OLD) -> 'instrument_id') IS DISTINCT FROM (to_jsonb(NEW) -> 'certificate', to_jsonb(NEW) -> 'instrument_id') THEN
    RAISE EXCEPTION 'certificate_keeps_its_number: submissions name it' USING ERRCODE = 'FP001';
  END IF;
  IF is_resting AND NOT EXISTS (SELECT 1 FROM "superseded_row" r WHERE r."object_id" = OLD."id" AND r.xmin = pg_current_xact_id()::xid) THEN
    RAISE EXCEPTION 'what_rests_is_superseded: submissions rest on it; what it said is kept beside it with a reason' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['maker', 'line', 'variant', 'claim', 'spool', 'calibration'] LOOP
    EXECUTE format('CREATE TRIGGER "what_rests_is_superseded" BEFORE UPDATE ON %I FOR EACH ROW EXECUTE FUNCTION "what_rests_is_superseded"()', t);
  END LOOP;
END $$;
DROP TRIGGER "calibration_is_append_only" ON "calibration";
CREATE TRIGGER "calibration_is_append_only" BEFORE DELETE ON "calibration" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();

-- What a spool is may be corrected while nothing rests on it and no sealed key names it.
CREATE OR REPLACE FUNCTION "spool_keeps_its_identity"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."blind_code" <> NEW."blind_code" THEN
    RAISE EXCEPTION 'blind_code_stands: a blind code never changes' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."variant_id" <> NEW."variant_id" AND NOT EXISTS (
      SELECT 1 FROM "spool_reidentification" r
      WHERE r."spool_id" = NEW."id" AND r."from_variant_id" = OLD."variant_id" AND r."to_variant_id" = NEW."variant_id")
    AND (EXISTS (SELECT 1 FROM "submission" s WHERE s."spool_id" = OLD."id" AND s."revision" > 0)
      OR EXISTS (SELECT 1 FROM "edition" e WHERE strpos(e."blind_key", OLD."blind_code" || ' ') > 0)) THEN
    RAISE EXCEPTION 'spool_is_reidentified_on_record: a spool that something rests on changes its variant only with a re-identification' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
