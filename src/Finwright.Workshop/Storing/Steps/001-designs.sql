-- Designs and their revisions. A revision is never changed once it is written.
CREATE TABLE design (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
    tags TEXT NOT NULL DEFAULT '[]' CHECK (json_valid(tags)),
    added_at TEXT NOT NULL,
    deleted_at TEXT
) STRICT;

-- Two designs on the shelf never share a name, whatever its capitals; one in the bin may.
CREATE UNIQUE INDEX design_name ON design (name COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE revision (
    id INTEGER PRIMARY KEY,
    design_id INTEGER NOT NULL REFERENCES design (id) ON DELETE CASCADE,
    number INTEGER NOT NULL CHECK (number >= 1),
    parent_id INTEGER REFERENCES revision (id) ON DELETE SET NULL,
    hash TEXT NOT NULL CHECK (length(hash) = 64),
    note TEXT NOT NULL,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    -- Last, so that lists of revisions need not read past it.
    text TEXT NOT NULL,
    UNIQUE (design_id, number)
) STRICT;

CREATE INDEX revision_parent ON revision (parent_id);
CREATE INDEX revision_hash ON revision (hash);

-- The parent alone may go, with a design that is thrown away for good.
CREATE TRIGGER revision_is_never_changed
BEFORE UPDATE OF id, design_id, number, hash, note, made_at, made_by, text ON revision
BEGIN
    SELECT RAISE(ABORT, 'a revision is never changed');
END;

-- What is drawn and worked out of a revision: both can be made again at any time.
CREATE TABLE picture (
    revision_id INTEGER PRIMARY KEY REFERENCES revision (id) ON DELETE CASCADE,
    svg TEXT NOT NULL
) STRICT;

CREATE TABLE prediction (
    revision_id INTEGER PRIMARY KEY REFERENCES revision (id) ON DELETE CASCADE,
    made_by TEXT NOT NULL,
    made_at TEXT NOT NULL,
    results TEXT NOT NULL CHECK (json_valid(results))
) STRICT;
