-- The job queue keeps its tables here. They are no part of the record: the program owns them, and makes them itself.
CREATE SCHEMA IF NOT EXISTS "pgboss";
