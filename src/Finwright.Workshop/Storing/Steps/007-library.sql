-- What the maker keeps for more than one design: boxes, printers, materials, resins, hardware, boards, sails, riders, spots.
CREATE TABLE library_item (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
    made_at TEXT NOT NULL,
    deleted_at TEXT,
    -- Last, so that lists need not read past it.
    text TEXT NOT NULL
) STRICT;

CREATE UNIQUE INDEX library_item_name ON library_item (kind, name COLLATE NOCASE) WHERE deleted_at IS NULL;
