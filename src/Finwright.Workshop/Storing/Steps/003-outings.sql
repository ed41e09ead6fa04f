-- What the water said.
CREATE TABLE outing (
    id INTEGER PRIMARY KEY,
    sailed_on TEXT NOT NULL,
    place TEXT NOT NULL DEFAULT '',
    wind_low_knots REAL,
    wind_high_knots REAL,
    sail TEXT NOT NULL DEFAULT '',
    sail_m2 REAL,
    board TEXT NOT NULL DEFAULT '',
    rider TEXT NOT NULL DEFAULT '',
    build_id INTEGER REFERENCES build (id) ON DELETE SET NULL,
    grip INTEGER CHECK (grip BETWEEN 1 AND 5),
    spin_outs INTEGER CHECK (spin_outs >= 0),
    speed INTEGER CHECK (speed BETWEEN 1 AND 5),
    feel INTEGER CHECK (feel BETWEEN 1 AND 5),
    note TEXT NOT NULL DEFAULT '',
    deleted_at TEXT
) STRICT;

CREATE INDEX outing_build ON outing (build_id);
CREATE INDEX outing_day ON outing (sailed_on);

CREATE TABLE track (
    outing_id INTEGER PRIMARY KEY REFERENCES outing (id) ON DELETE CASCADE,
    file_name TEXT NOT NULL,
    hash TEXT NOT NULL CHECK (length(hash) = 64),
    points BLOB NOT NULL
) STRICT;

CREATE INDEX track_hash ON track (hash);
