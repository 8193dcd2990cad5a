-- The rules of the record, kept by the database itself. A broken rule raises SQLSTATE FP001 with the rule's name first.

ALTER TABLE "account"
  ADD CONSTRAINT "email_is_lower_case" CHECK ("email" = lower("email")),
  ADD CONSTRAINT "roles_are_known" CHECK ("roles" <@ ARRAY['tester','reviewer','editor','admin']::text[]);
ALTER TABLE "invitation" ADD CONSTRAINT "invited_roles_are_known" CHECK ("roles" <@ ARRAY['tester','reviewer','editor','admin']::text[] AND cardinality("roles") > 0);
ALTER TABLE "line"
  ADD CONSTRAINT "construction_is_known" CHECK ("construction" IN ('braided','fused','hollowCore','twisted','monofilament')),
  ADD CONSTRAINT "density_is_positive" CHECK ("density_g_per_cm3" > 0),
  ADD CONSTRAINT "carriers_only_when_braided" CHECK ("carriers" IS NULL OR ("carriers" > 0 AND "construction" IN ('braided','hollowCore')));
ALTER TABLE "claim"
  ADD CONSTRAINT "claimed_quantity_is_known" CHECK ("quantity" IN ('breakingForce','diameter','linearDensity','peNumber')),
  ADD CONSTRAINT "claim_basis_is_known" CHECK ("basis" IN ('average','minimum','maximum','class','notStated')),
  ADD CONSTRAINT "claim_is_positive" CHECK ("value_si" > 0);
ALTER TABLE "spool" ADD CONSTRAINT "spool_source_is_known" CHECK ("source" IN ('bought','makerSupplied','lent'));
ALTER TABLE "instrument"
  ADD CONSTRAINT "instrument_kind_is_known" CHECK ("kind" IN ('forceGauge','loadFrame','micrometer','opticalGauge','balance','lengthMeasure','abrader')),
  ADD CONSTRAINT "capacity_exceeds_resolution" CHECK ("capacity_si" > "resolution_si" AND "resolution_si" > 0);
ALTER TABLE "calibration"
  ADD CONSTRAINT "calibration_ends_after_it_starts" CHECK ("valid_until" >= "valid_from"),
  ADD CONSTRAINT "uncertainty_is_positive" CHECK ("expanded_uncertainty_percent" > 0 AND "coverage_factor" > 0);
ALTER TABLE "method_version"
  ADD CONSTRAINT "version_number_is_positive" CHECK ("number" > 0),
  ADD CONSTRAINT "method_version_ends_after_it_starts" CHECK ("effective_until" IS NULL OR "effective_until" >= "effective_from");
ALTER TABLE "submission"
  ADD CONSTRAINT "submission_state_is_known" CHECK ("state" IN ('draft','submitted','accepted','returned','refused','withdrawn')),
  ADD CONSTRAINT "only_a_draft_has_no_revision" CHECK (("state" = 'draft') = ("revision" = 0));
ALTER TABLE "submission_revision" ADD CONSTRAINT "humidity_is_a_share" CHECK ("humidity_percent" BETWEEN 0 AND 100);
ALTER TABLE "specimen"
  ADD CONSTRAINT "condition_is_known" CHECK ("condition" IN ('untreated','treated')),
  ADD CONSTRAINT "invalid_specimen_says_why" CHECK (("validity" = 'valid' AND "invalid_reason" IS NULL) OR ("validity" = 'invalid' AND "invalid_reason" IS NOT NULL)),
  ADD CONSTRAINT "specimen_number_is_positive" CHECK ("number" > 0);
ALTER TABLE "reading" ADD CONSTRAINT "reading_is_positive" CHECK ("value_si" > 0);
CREATE UNIQUE INDEX "one_reading_per_role_and_station" ON "reading" ("specimen_id", "role", "station") NULLS NOT DISTINCT;
ALTER TABLE "finding" ADD CONSTRAINT "severity_is_known" CHECK ("severity" IN ('blocks','held','note'));
ALTER TABLE "review"
  ADD CONSTRAINT "decision_is_known" CHECK ("decision" IN ('accepted','returned','refused')),
  ADD CONSTRAINT "a_no_has_a_reason" CHECK ("decision" = 'accepted' OR length(trim("reason")) > 0);
ALTER TABLE "set_aside" ADD CONSTRAINT "setting_aside_has_a_reason" CHECK (length(trim("reason")) > 0);
ALTER TABLE "query" ADD CONSTRAINT "question_has_words" CHECK (length(trim("question")) > 0);
CREATE UNIQUE INDEX "one_open_query_per_submission" ON "query" ("submission_id") WHERE "answered_at" IS NULL;
ALTER TABLE "withdrawal" ADD CONSTRAINT "withdrawal_has_a_reason" CHECK (length(trim("reason")) > 0);
ALTER TABLE "edition"
  ADD CONSTRAINT "edition_state_is_known" CHECK ("state" IN ('planned','open','closed','published')),
  ADD CONSTRAINT "edition_closes_after_it_opens" CHECK ("closes_on" >= "opens_on"),
  ADD CONSTRAINT "edition_does_not_precede_itself" CHECK ("previous_id" <> "id");
ALTER TABLE "exclusion"
  ADD CONSTRAINT "exclusion_reason_is_known" CHECK ("reason_code" IN ('notObtainable','labelInDoubt','duplicate','makersRequestRefused','interest')),
  ADD CONSTRAINT "exclusion_effect_is_known" CHECK ("effect" IN ('closedUp','shownUnplaced')),
  ADD CONSTRAINT "exclusion_has_words" CHECK (length(trim("words")) > 0);
ALTER TABLE "release"
  ADD CONSTRAINT "release_state_is_known" CHECK ("state" IN ('building','published','superseded')),
  ADD CONSTRAINT "revision_is_positive" CHECK ("revision" > 0),
  ADD CONSTRAINT "later_revision_has_an_erratum" CHECK (("revision" = 1) = ("erratum" IS NULL)),
  ADD CONSTRAINT "published_release_has_a_digest" CHECK ("state" = 'building' OR ("digest" IS NOT NULL AND "manifest" IS NOT NULL AND "published_at" IS NOT NULL));
CREATE UNIQUE INDEX "one_published_release_per_edition" ON "release" ("edition_id") WHERE "state" = 'published';
CREATE UNIQUE INDEX "one_release_building_per_edition" ON "release" ("edition_id") WHERE "state" = 'building';

CREATE FUNCTION "forbid_change"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'record_is_append_only: % of % is refused', TG_OP, TG_TABLE_NAME USING ERRCODE = 'FP001';
END $$;

DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['submission_revision','submission_instrument','specimen','reading','review','set_aside','withdrawal',
    'audit_event','method_version','scheme','calibration','spool_reidentification','edition_method'] LOOP
    EXECUTE format('CREATE TRIGGER "%s_is_append_only" BEFORE UPDATE OR DELETE ON %I FOR EACH ROW EXECUTE FUNCTION "forbid_change"()', t, t);
    EXECUTE format('CREATE TRIGGER "%s_is_not_emptied" BEFORE TRUNCATE ON %I FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"()', t, t);
  END LOOP;
END $$;

-- A finding stands as found; only the reviewer's answer is written, once.
CREATE FUNCTION "finding_stands"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' OR OLD."resolution" IS NOT NULL
     OR (OLD."id", OLD."revision_id", OLD."code", OLD."severity", OLD."detail") IS DISTINCT FROM (NEW."id", NEW."revision_id", NEW."code", NEW."severity", NEW."detail") THEN
    RAISE EXCEPTION 'finding_stands: a finding is answered once and never changed' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "finding_stands" BEFORE UPDATE OR DELETE ON "finding" FOR EACH ROW EXECUTE FUNCTION "finding_stands"();

CREATE FUNCTION "reviewer_is_not_tester"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission_revision" r JOIN "submission" s ON s."id" = r."submission_id"
             WHERE r."id" = NEW."revision_id" AND s."tester_id" = NEW."reviewer_id") THEN
    RAISE EXCEPTION 'reviewer_is_not_tester: nobody reviews their own submission' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "reviewer_is_not_tester" BEFORE INSERT ON "review" FOR EACH ROW EXECUTE FUNCTION "reviewer_is_not_tester"();

CREATE FUNCTION "withdrawer_is_not_tester"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF EXISTS (SELECT 1 FROM "submission" s WHERE s."id" = NEW."submission_id" AND s."tester_id" = NEW."by_id") THEN
    RAISE EXCEPTION 'withdrawer_is_not_tester: nobody withdraws their own submission' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "withdrawer_is_not_tester" BEFORE INSERT ON "withdrawal" FOR EACH ROW EXECUTE FUNCTION "withdrawer_is_not_tester"();

CREATE FUNCTION "submission_moves_lawfully"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    IF OLD."state" <> 'draft' THEN
      RAISE EXCEPTION 'only_a_draft_is_deleted: a submission that was handed in stays on record' USING ERRCODE = 'FP001';
    END IF;
    RETURN OLD;
  END IF;
  IF OLD."tester_id" <> NEW."tester_id" OR OLD."reference" <> NEW."reference" THEN
    RAISE EXCEPTION 'submission_keeps_its_tester: tester and reference never change' USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> NEW."state" AND (OLD."state", NEW."state") NOT IN (('draft','submitted'), ('submitted','accepted'), ('submitted','returned'),
      ('submitted','refused'), ('returned','submitted'), ('accepted','withdrawn')) THEN
    RAISE EXCEPTION 'submission_moves_lawfully: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "submission_moves_lawfully" BEFORE UPDATE OR DELETE ON "submission" FOR EACH ROW EXECUTE FUNCTION "submission_moves_lawfully"();

-- An accepted state needs the accepting review of the current revision.
CREATE FUNCTION "acceptance_has_a_review"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NEW."state" = 'accepted' AND OLD."state" <> 'accepted' AND NOT EXISTS (
      SELECT 1 FROM "submission_revision" r JOIN "review" v ON v."revision_id" = r."id"
      WHERE r."submission_id" = NEW."id" AND r."number" = NEW."revision" AND v."decision" = 'accepted') THEN
    RAISE EXCEPTION 'acceptance_has_a_review: a submission is accepted only by a review of its current revision' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "acceptance_has_a_review" BEFORE UPDATE ON "submission" FOR EACH ROW EXECUTE FUNCTION "acceptance_has_a_review"();

CREATE FUNCTION "edition_moves_forward"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF OLD."state" <> NEW."state" AND (OLD."state", NEW."state") NOT IN (('planned','open'), ('open','closed'), ('closed','published')) THEN
    RAISE EXCEPTION 'edition_moves_forward: % to % is not a step', OLD."state", NEW."state" USING ERRCODE = 'FP001';
  END IF;
  IF OLD."state" <> 'planned' AND (OLD."scheme_id", OLD."blind_key_digest", OLD."check_set_version")
      IS DISTINCT FROM (NEW."scheme_id", NEW."blind_key_digest", NEW."check_set_version") THEN
    RAISE EXCEPTION 'opening_pins_the_rules: scheme, key digest and checks are fixed when an edition opens' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "edition_moves_forward" BEFORE UPDATE ON "edition" FOR EACH ROW EXECUTE FUNCTION "edition_moves_forward"();

CREATE FUNCTION "release_is_immutable"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF TG_OP = 'DELETE' THEN
    RAISE EXCEPTION 'release_is_immutable: a release is never deleted' USING ERRCODE = 'FP001';
  END IF;
  IF (OLD."state", NEW."state") NOT IN (('building','building'), ('building','published'), ('published','superseded'))
     OR (OLD."state" <> 'building' AND (OLD."digest", OLD."manifest", OLD."published_at", OLD."revision", OLD."edition_id", OLD."erratum", OLD."previous_digest")
         IS DISTINCT FROM (NEW."digest", NEW."manifest", NEW."published_at", NEW."revision", NEW."edition_id", NEW."erratum", NEW."previous_digest")) THEN
    RAISE EXCEPTION 'release_is_immutable: what is published never changes' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "release_is_immutable" BEFORE UPDATE OR DELETE ON "release" FOR EACH ROW EXECUTE FUNCTION "release_is_immutable"();
