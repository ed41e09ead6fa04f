-- What is being changed in a design and is not yet a revision: every step, so that each can be undone after a restart too.
CREATE TABLE draft (
    design_id INTEGER PRIMARY KEY REFERENCES design (id) ON DELETE CASCADE,
    base_id INTEGER NOT NULL REFERENCES revision (id) ON DELETE CASCADE,
    position INTEGER NOT NULL CHECK (position >= 0),
    kept_at TEXT NOT NULL
) STRICT;

-- Step 0 is what the draft began with.
CREATE TABLE draft_step (
    design_id INTEGER NOT NULL REFERENCES design (id) ON DELETE CASCADE,
    number INTEGER NOT NULL CHECK (number >= 0),
    said TEXT NOT NULL,
    place TEXT NOT NULL,
    text TEXT NOT NULL,
    PRIMARY KEY (design_id, number)
) STRICT;
