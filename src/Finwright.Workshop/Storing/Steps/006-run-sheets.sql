-- What is done on the day of a print or a pour: the steps as they were laid out, and what was ticked, timed, read and noted at each.
CREATE TABLE run_sheet (
    id INTEGER PRIMARY KEY,
    design_id INTEGER NOT NULL REFERENCES design (id) ON DELETE CASCADE,
    build_id INTEGER REFERENCES build (id) ON DELETE SET NULL,
    kind TEXT NOT NULL,
    title TEXT NOT NULL CHECK (length(title) BETWEEN 1 AND 200),
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    -- Last, so that lists of sheets need not read past it.
    plan TEXT NOT NULL CHECK (json_valid(plan))
) STRICT;

CREATE INDEX run_sheet_design ON run_sheet (design_id);
CREATE INDEX run_sheet_build ON run_sheet (build_id);

CREATE TABLE run_entry (
    sheet_id INTEGER NOT NULL REFERENCES run_sheet (id) ON DELETE CASCADE,
    key TEXT NOT NULL CHECK (length(key) BETWEEN 1 AND 80),
    value TEXT NOT NULL CHECK (length(value) <= 4000),
    at TEXT NOT NULL,
    PRIMARY KEY (sheet_id, key)
) STRICT;
