-- What builds and bench have taught, and of what.
CREATE TABLE calibration (
    id INTEGER PRIMARY KEY,
    made_at TEXT NOT NULL,
    made_by TEXT NOT NULL,
    build_id INTEGER REFERENCES build (id) ON DELETE CASCADE,
    filament_id INTEGER REFERENCES stock_item (id) ON DELETE SET NULL,
    resin_id INTEGER REFERENCES stock_item (id) ON DELETE SET NULL,
    quantity TEXT NOT NULL,
    factor REAL NOT NULL CHECK (factor > 0),
    low REAL NOT NULL CHECK (low > 0),
    high REAL NOT NULL CHECK (high >= low),
    note TEXT NOT NULL DEFAULT '',
    deleted_at TEXT
) STRICT;

CREATE INDEX calibration_build ON calibration (build_id);

CREATE TABLE calibration_session (
    calibration_id INTEGER NOT NULL REFERENCES calibration (id) ON DELETE CASCADE,
    session_id INTEGER NOT NULL REFERENCES bench_session (id) ON DELETE CASCADE,
    PRIMARY KEY (calibration_id, session_id)
) STRICT;
