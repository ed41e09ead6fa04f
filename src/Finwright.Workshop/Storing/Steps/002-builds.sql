-- What is in the workshop, what was built of it, and what the bench said. Names of columns carry their units.
CREATE TABLE stock_item (
    id INTEGER PRIMARY KEY,
    kind TEXT NOT NULL,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 120),
    batch TEXT NOT NULL DEFAULT '',
    material TEXT NOT NULL DEFAULT '',
    quantity REAL NOT NULL CHECK (quantity >= 0),
    unit TEXT NOT NULL,
    price REAL CHECK (price >= 0),
    currency TEXT NOT NULL DEFAULT '',
    bought_on TEXT,
    opened_on TEXT,
    use_before TEXT,
    note TEXT NOT NULL DEFAULT '',
    deleted_at TEXT
) STRICT;

CREATE UNIQUE INDEX stock_item_name ON stock_item (name COLLATE NOCASE, batch COLLATE NOCASE) WHERE deleted_at IS NULL;

CREATE TABLE build (
    id INTEGER PRIMARY KEY,
    revision_id INTEGER NOT NULL REFERENCES revision (id) ON DELETE RESTRICT,
    name TEXT NOT NULL CHECK (length(name) BETWEEN 1 AND 80),
    made_on TEXT,
    filament_id INTEGER REFERENCES stock_item (id) ON DELETE SET NULL,
    resin_id INTEGER REFERENCES stock_item (id) ON DELETE SET NULL,
    plastic_g REAL,
    resin_ml REAL,
    mass_g REAL,
    print_hours REAL,
    room_celsius REAL,
    bath_celsius REAL,
    peak_celsius REAL,
    cost REAL,
    currency TEXT NOT NULL DEFAULT '',
    problems TEXT NOT NULL DEFAULT '',
    note TEXT NOT NULL DEFAULT '',
    deleted_at TEXT
) STRICT;

CREATE UNIQUE INDEX build_name ON build (name COLLATE NOCASE) WHERE deleted_at IS NULL;
CREATE INDEX build_revision ON build (revision_id);

CREATE TABLE build_part (
    build_id INTEGER NOT NULL REFERENCES build (id) ON DELETE CASCADE,
    part TEXT NOT NULL CHECK (length(part) BETWEEN 1 AND 80),
    printed_on TEXT,
    filament_id INTEGER REFERENCES stock_item (id) ON DELETE SET NULL,
    plastic_g REAL,
    print_hours REAL,
    note TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (build_id, part)
) STRICT;

CREATE TABLE build_photo (
    build_id INTEGER NOT NULL REFERENCES build (id) ON DELETE CASCADE,
    path TEXT NOT NULL CHECK (length(path) BETWEEN 1 AND 4096),
    caption TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (build_id, path)
) STRICT;

CREATE TABLE stock_use (
    id INTEGER PRIMARY KEY,
    item_id INTEGER NOT NULL REFERENCES stock_item (id) ON DELETE CASCADE,
    build_id INTEGER REFERENCES build (id) ON DELETE SET NULL,
    quantity REAL NOT NULL,
    used_on TEXT,
    note TEXT NOT NULL DEFAULT ''
) STRICT;

CREATE INDEX stock_use_item ON stock_use (item_id);
CREATE INDEX stock_use_build ON stock_use (build_id);

CREATE TABLE bench_session (
    id INTEGER PRIMARY KEY,
    build_id INTEGER NOT NULL REFERENCES build (id) ON DELETE CASCADE,
    taken_on TEXT NOT NULL,
    root_hold TEXT NOT NULL,
    note TEXT NOT NULL DEFAULT '',
    deleted_at TEXT
) STRICT;

CREATE INDEX bench_session_build ON bench_session (build_id);

CREATE TABLE bench_reading (
    session_id INTEGER NOT NULL REFERENCES bench_session (id) ON DELETE CASCADE,
    line INTEGER NOT NULL,
    mass_kg REAL NOT NULL,
    at_mm REAL NOT NULL,
    at_chord TEXT NOT NULL,
    read_at_mm REAL NOT NULL,
    read_chord TEXT NOT NULL,
    deflection_mm REAL,
    deflection_deviation_mm REAL,
    twist_degrees REAL,
    twist_deviation_degrees REAL,
    note TEXT NOT NULL DEFAULT '',
    PRIMARY KEY (session_id, line),
    CHECK (deflection_mm IS NOT NULL OR twist_degrees IS NOT NULL)
) STRICT;
