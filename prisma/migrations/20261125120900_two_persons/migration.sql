-- AlterTable
ALTER TABLE "spool_reidentification" ADD COLUMN     "proposal_id" UUID;

-- AlterTable
ALTER TABLE "withdrawal" ADD COLUMN     "proposal_id" UUID;

-- CreateTable
CREATE TABLE "proposal" (
    "id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "object" TEXT NOT NULL,
    "variant" TEXT,
    "reason" TEXT NOT NULL,
    "by_id" UUID NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "proposal_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE UNIQUE INDEX "spool_reidentification_proposal_id_key" ON "spool_reidentification"("proposal_id");

-- CreateIndex
CREATE UNIQUE INDEX "withdrawal_proposal_id_key" ON "withdrawal"("proposal_id");

-- AddForeignKey
ALTER TABLE "spool_reidentification" ADD CONSTRAINT "spool_reidentification_proposal_id_fkey" FOREIGN KEY ("proposal_id") REFERENCES "proposal"("id") ON DELETE SET NULL ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "proposal" ADD CONSTRAINT "proposal_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "account"("id") ON DELETE RESTRICT ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "withdrawal" ADD CONSTRAINT "withdrawal_proposal_id_fkey" FOREIGN KEY ("proposal_id") REFERENCES "proposal"("id") ON DELETE SET NULL ON UPDATE CASCADE;



ALTER TABLE "proposal"
  ADD CONSTRAINT "proposal_kind_is_known" CHECK ("kind" IN ('withdrawal', 'reidentification')),
  ADD CONSTRAINT "proposal_has_a_reason" CHECK (length(trim("reason")) > 0),
  ADD CONSTRAINT "reidentification_names_a_variant" CHECK (("kind" = 'reidentification') = ("variant" IS NOT NULL));
CREATE TRIGGER "proposal_is_append_only" BEFORE UPDATE OR DELETE ON "proposal" FOR EACH ROW EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "proposal_is_not_emptied" BEFORE TRUNCATE ON "proposal" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();

-- What was published is taken back, and what a spool is changes, by two persons: one proposes, another carries it out.
CREATE FUNCTION "two_persons_do_it"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF NOT EXISTS (SELECT 1 FROM "proposal" p WHERE p."id" = NEW."proposal_id" AND p."by_id" <> NEW."by_id"
                 AND p."kind" = CASE TG_TABLE_NAME WHEN 'withdrawal' THEN 'withdrawal' ELSE 'reidentification' END) THEN
    RAISE EXCEPTION 'two_persons_do_it: one proposes, another carries it out' USING ERRCODE = 'FP001';
  END IF;
  RETURN NEW;
END $$;
CREATE TRIGGER "two_persons_do_it" BEFORE INSERT ON "withdrawal" FOR EACH ROW EXECUTE FUNCTION "two_persons_do_it"();
CREATE TRIGGER "two_persons_do_it" BEFORE INSERT ON "spool_reidentification" FOR EACH ROW EXECUTE FUNCTION "two_persons_do_it"();
