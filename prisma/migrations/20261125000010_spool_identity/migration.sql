-- A blind code stands for ever. What a spool is changes only by a re-identification on record, made by somebody who did not test it.
ALTER TABLE "spool_reidentification"
  ADD CONSTRAINT "reidentification_has_a_reason" CHECK (length(trim("reason")) > 0),
  ADD CONSTRAINT "reidentification_changes_the_variant" CHECK ("from_variant_id" <> "to_variant_id");

CREATE FUNCTION "spool_keeps_its_identity"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."blind_code" <> NEW."blind_code" THEN
    RAISE EXCEPTION 'blind_code_stands: a blind code never changes' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."variant_id" <> NEW."variant_id" AND NOT EXISTS (
      SELECT 1 FROM "spool_reidentification" r
      WHERE r."spool_id" = NEW."id" AND r."from_variant_id" = OLD."variant_id" AND r."to_variant_id" = NEW."variant_id") THEN
    RAISE EXCEPTION 'spool_is_reidentified_on_record: a spool changes its variant only with a re-identification' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "spool_keeps_its_identity" BEFORE UPDATE ON "spool" FOR EACH ROW EXECUTE FUNCTION "spool_keeps_its_identity"();

CREATE FUNCTION "reidentifier_is_not_tester"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission" s WHERE s."spool_id" = NEW."spool_id" AND s."tester_id" = NEW."by_id" AND s."revision" > 0) THEN
    RAISE EXCEPTION 'reidentifier_is_not_tester: nobody re-identifies a spool that they tested' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "reidentifier_is_not_tester" BEFORE INSERT ON "spool_reidentification" FOR EACH ROW EXECUTE FUNCTION "reidentifier_is_not_tester"();
