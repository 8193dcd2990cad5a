-- Row triggers do not see TRUNCATE: what is published, and what was found, is not lost that way either.
CREATE TRIGGER "release_is_not_emptied" BEFORE TRUNCATE ON "release" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "finding_is_not_emptied" BEFORE TRUNCATE ON "finding" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
CREATE TRIGGER "submission_is_not_emptied" BEFORE TRUNCATE ON "submission" FOR EACH STATEMENT EXECUTE FUNCTION "forbid_change"();
