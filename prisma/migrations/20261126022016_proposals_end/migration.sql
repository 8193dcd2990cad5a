-- CreateTable
CREATE TABLE "proposal_end" (
    "proposal_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "proposal_end_pkey" PRIMARY KEY ("proposal_id")
);

-- AddForeignKey
ALTER TABLE "proposal_end" ADD CONSTRAINT "proposal_end_proposal_id_fkey" FOREIGN KEY ("proposal_id") REFERENCES "proposal"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "proposal_end" ADD CONSTRAINT "proposal_end_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;


ALTER TABLE "proposal_end"
  ADD CONSTRAINT "proposal_end_kind_is_known" CHECK ("kind" IN ('declined', 'calledOff')),
  ADD CONSTRAINT "proposal_end_has_a_reason" CHECK (length(trim("reason")) > 0);
CREATE TRIGGER "proposal_end_is_append_only" BEFORE UPDATE OR DELETE ON "proposal_end" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "proposal_end_is_not_emptied" BEFORE TRUNCATE ON "proposal_end" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- Another person declines, its own person calls off, and neither what is carried out; the lock makes one of the two wait for the other.
CREATE FUNCTION "proposal_ends_once"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "proposal" WHERE "id" = NEW."proposal_id" FOR UPDATE;
  IF EXISTS (SELECT 1 FROM "proposal" p WHERE p."id" = NEW."proposal_id" AND (p."by_id" = NEW."by_id") <> (NEW."kind" = 'calledOff')) THEN
    RAISE EXCEPTION 'proposal_ends_once: another person declines a proposal, its own person calls it off' USING ERRCODE = 'FP001';
  END IF;
  IF EXISTS (SELECT 1 FROM "withdrawal" WHERE "proposal_id" = NEW."proposal_id")
     OR EXISTS (SELECT 1 FROM "spool_reidentification" WHERE "proposal_id" = NEW."proposal_id") THEN
    RAISE EXCEPTION 'proposal_ends_once: what is carried out is neither declined nor called off' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "proposal_ends_once" BEFORE INSERT ON "proposal_end" FOR EACH ROW EXECUTE FUNCTION "proposal_ends_once"();

CREATE FUNCTION "ended_proposal_stays_ended"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM 1 FROM "proposal" WHERE "id" = NEW."proposal_id" FOR UPDATE;
  IF EXISTS (SELECT 1 FROM "proposal_end" WHERE "proposal_id" = NEW."proposal_id") THEN
    RAISE EXCEPTION 'ended_proposal_stays_ended: a proposal that was declined or called off is not carried out' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "ended_proposal_stays_ended" BEFORE INSERT ON "withdrawal" FOR EACH ROW EXECUTE FUNCTION "ended_proposal_stays_ended"();
CREATE TRIGGER "ended_proposal_stays_ended" BEFORE INSERT ON "spool_reidentification" FOR EACH ROW EXECUTE FUNCTION "ended_proposal_stays_ended"();
