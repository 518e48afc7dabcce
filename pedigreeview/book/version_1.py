"""The tables of the first version of a book's file, as it made them; never to be changed."""

from __future__ import annotations

__all__ = ["TABLES_1"]

TABLES_1 = """\
CREATE TABLE "book" (
  "row_id" INTEGER PRIMARY KEY CHECK ("row_id" = 1),
  "name" TEXT NOT NULL,
  "crop" TEXT NOT NULL,
  "ploidy" INTEGER,
  "founders_as" TEXT NOT NULL,
  "variety_fixation" REAL NOT NULL,
  "plant_fixation" REAL NOT NULL,
  "double_reduction" REAL,
  "outcrossing" REAL,
  "code_pattern" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "plants" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "plant" TEXT NOT NULL UNIQUE CHECK ("plant" <> ''),
  "name" TEXT NOT NULL,
  "kind" TEXT NOT NULL CHECK ("kind" IN ('', 'variety', 'plant', 'family')),
    "raised" TEXT NOT NULL CHECK ("raised" IN ('', 'founder', 'cross', 'seed_of', 'sibbed_in',
    'cutting_of', 'doubled_haploid_of', 'doubled_of')),
  "cross" TEXT REFERENCES "crosses" ("cross") DEFERRABLE INITIALLY DEFERRED,
  "source" TEXT REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "selfings" INTEGER NOT NULL,
  "fixation" REAL,
  "crop" TEXT NOT NULL,
  "ploidy" INTEGER,
  "sown" TEXT NOT NULL,
    "status" TEXT NOT NULL CHECK ("status" IN ('', 'growing', 'kept', 'culled', 'lost',
    'finished')),
  "obtained_from" TEXT NOT NULL,
  "protected" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "crosses" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "cross" TEXT NOT NULL UNIQUE CHECK ("cross" <> ''),
  "seed_parent" TEXT REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "pollen_parent" TEXT REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "drawn" TEXT NOT NULL CHECK ("drawn" IN ('', 'one', 'each')),
  "intended" TEXT NOT NULL CHECK ("intended" IN ('', 'cross', 'selfing', 'open')),
  "made_on" TEXT NOT NULL,
    "seed_doubt" TEXT NOT NULL CHECK ("seed_doubt" IN ('', 'certain', 'probable', 'possible',
    'unknown')),
    "pollen_doubt" TEXT NOT NULL CHECK ("pollen_doubt" IN ('', 'certain', 'probable',
    'possible', 'unknown')),
  "state" TEXT NOT NULL CHECK ("state" IN ('', 'planned', 'made', 'skipped')),
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "pollen_candidates" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "cross" TEXT NOT NULL REFERENCES "crosses" ("cross") DEFERRABLE INITIALLY DEFERRED,
  "candidate" TEXT NOT NULL CHECK ("candidate" <> ''),
  "odds" REAL NOT NULL,
  "extra" TEXT,
  UNIQUE ("cross", "candidate")
) STRICT;
CREATE TABLE "evidence" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "cross" TEXT NOT NULL REFERENCES "crosses" ("cross") DEFERRABLE INITIALLY DEFERRED,
  "side" TEXT NOT NULL CHECK ("side" IN ('seed', 'pollen')),
  "for_or_against" TEXT NOT NULL CHECK ("for_or_against" IN ('for', 'against')),
  "date" TEXT NOT NULL,
  "text" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "pollinations" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "pollination" TEXT NOT NULL UNIQUE CHECK ("pollination" <> ''),
  "cross" TEXT NOT NULL REFERENCES "crosses" ("cross") DEFERRABLE INITIALLY DEFERRED,
  "date" TEXT NOT NULL,
  "flowers" INTEGER,
  "emasculated_on" TEXT NOT NULL,
  "cover" TEXT NOT NULL,
  "tag" TEXT NOT NULL,
  "by" TEXT NOT NULL,
  "set" INTEGER,
  "dropped" INTEGER,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "harvests" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "harvest" TEXT NOT NULL UNIQUE CHECK ("harvest" <> ''),
  "cross" TEXT NOT NULL REFERENCES "crosses" ("cross") DEFERRABLE INITIALLY DEFERRED,
  "date" TEXT NOT NULL,
  "fruits" INTEGER,
  "seeds" INTEGER,
  "packet" TEXT REFERENCES "packets" ("packet") DEFERRABLE INITIALLY DEFERRED,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "packets" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "packet" TEXT NOT NULL UNIQUE CHECK ("packet" <> ''),
  "harvest" TEXT REFERENCES "harvests" ("harvest") DEFERRABLE INITIALLY DEFERRED,
  "generation" TEXT NOT NULL,
  "borne_on" TEXT REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "covered" INTEGER CHECK ("covered" IN (0, 1)),
  "seeds" INTEGER,
  "left" INTEGER,
  "germination" REAL,
  "place" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "sowings" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "sowing" TEXT NOT NULL UNIQUE CHECK ("sowing" <> ''),
  "packet" TEXT REFERENCES "packets" ("packet") DEFERRABLE INITIALLY DEFERRED,
  "date" TEXT NOT NULL,
  "seeds" INTEGER,
  "up" INTEGER,
  "kept" INTEGER,
  "place" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "traits" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "trait" TEXT NOT NULL UNIQUE CHECK ("trait" <> ''),
  "type" TEXT NOT NULL CHECK ("type" IN ('score', 'measure', 'category', 'yes_no')),
  "unit" TEXT NOT NULL,
  "low" REAL,
  "high" REAL,
  "better" TEXT NOT NULL CHECK ("better" IN ('', 'high', 'low', 'none')),
  "values" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "scores" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "plant" TEXT NOT NULL REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "trait" TEXT NOT NULL REFERENCES "traits" ("trait") DEFERRABLE INITIALLY DEFERRED,
  "date" TEXT NOT NULL,
  "value" TEXT NOT NULL,
  "by" TEXT NOT NULL,
  "note" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "notes" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "about" TEXT NOT NULL CHECK ("about" <> ''),
  "date" TEXT NOT NULL,
  "text" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "photos" (
  "row_id" INTEGER PRIMARY KEY AUTOINCREMENT,
  "photo" TEXT NOT NULL UNIQUE CHECK ("photo" <> ''),
  "plant" TEXT REFERENCES "plants" ("plant") DEFERRABLE INITIALLY DEFERRED,
  "date" TEXT NOT NULL,
  "caption" TEXT NOT NULL,
  "extra" TEXT
) STRICT;
CREATE TABLE "about" (
  "one" INTEGER PRIMARY KEY CHECK ("one" = 1),
  "revision" INTEGER NOT NULL,
  "book_id" TEXT NOT NULL,
  "descriptor" TEXT NOT NULL
) STRICT;
CREATE TABLE "unknown_tables" (
  "row_id" INTEGER PRIMARY KEY,
  "name" TEXT NOT NULL UNIQUE,
  "text" TEXT NOT NULL
) STRICT;
CREATE TABLE "photo_files" (
  "photo" TEXT PRIMARY KEY,
  "data" BLOB NOT NULL
) STRICT;
CREATE INDEX "plants.cross" ON "plants" ("cross");
CREATE INDEX "plants.source" ON "plants" ("source");
CREATE INDEX "crosses.seed_parent" ON "crosses" ("seed_parent");
CREATE INDEX "crosses.pollen_parent" ON "crosses" ("pollen_parent");
CREATE INDEX "pollen_candidates.cross" ON "pollen_candidates" ("cross");
CREATE INDEX "evidence.cross" ON "evidence" ("cross");
CREATE INDEX "pollinations.cross" ON "pollinations" ("cross");
CREATE INDEX "harvests.cross" ON "harvests" ("cross");
CREATE INDEX "harvests.packet" ON "harvests" ("packet");
CREATE INDEX "packets.harvest" ON "packets" ("harvest");
CREATE INDEX "packets.borne_on" ON "packets" ("borne_on");
CREATE INDEX "sowings.packet" ON "sowings" ("packet");
CREATE INDEX "scores.plant" ON "scores" ("plant");
CREATE INDEX "scores.trait" ON "scores" ("trait");
CREATE INDEX "photos.plant" ON "photos" ("plant")
"""
