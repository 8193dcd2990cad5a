-- Whoever serves what is published hears at once that there is something new.
CREATE FUNCTION "releases_are_told"() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  PERFORM pg_notify('releases', '');
  RETURN NULL;
END $$;
CREATE TRIGGER "releases_are_told" AFTER UPDATE OF "state" ON "release" FOR EACH STATEMENT EXECUTE FUNCTION "releases_are_told"();
