using Finwright.Design;
using Finwright.Strength.Joints;

namespace Finwright.Papers.Words.German;

internal sealed partial class GermanSheet
{
    public override string Strip => "Streifen";

    public override string StripCaption => "Der Streifen in seinem Schlitz, quer geschnitten und vergrößert.";

    public override StepWords RoughenStrip => new("Streifen und Schlitz mit Körnung 120 bis 180 aufrauen, mit Isopropanol abwischen, trocken probieren", "Eine Klebung hält nur auf rauen, sauberen Flächen.");

    public override StepWords BondStrip => new("Mit angedicktem oder zähem Epoxid einkleben, zwischen geraden Brettern mit Folie spannen, härten lassen", "Kleber in der ganzen Tiefe des Schlitzes hält das Wasser draußen und den Streifen drin.");

    public override StepWords TrimStrip => new("Die Außenkante nach der Schablone beschneiden und die Ecken brechen", "Eine ausgefranste Kante brummt, eine scharfe schneidet.");

    public override string Join => "Basis und Blatt";

    public override StepWords RoughenFaces => new("Beide Flächen mit Körnung 120 bis 180 aufrauen, abwischen, die Schrauben noch einmal fetten", "Eine Klebung hält nur auf rauen, sauberen Flächen; auf fettigen gar nicht.");

    public override StepWords BondBase => new("Beide Flächen mit angedicktem Epoxid bestreichen, Basis und Blatt von Hand zusammenziehen, bis es ringsum austritt, abwischen, härten lassen", "Die Klebung füllt, was zwei gedruckte Flächen offen lassen.");

    public override StepWords JoinDry => new("Basis und Blatt ohne Klebung zusammensetzen; nach Licht zwischen den Flächen sehen und abtragen, was vorsteht", "Schrauben ziehen Flächen nur dort zusammen, wo sie sich berühren.");

    public override StepWords LookStraight => new("Von der Spitze zur Basis und an der Rumpfebene entlangsehen", "Ein schiefes Blatt zieht auf jedem Bug zu einer Seite.");

    public override string Sand => "Schleifen und Finish";

    public override StepWords Wash => new("Die Teile mit Wasser und Scheuerschwamm waschen, trocknen", "Der wachsige Film auf gehärtetem Epoxid setzt das Papier zu und lässt keinen Anstrich haften.");

    public override StepWords SandShape => new("Körnung 80 auf dem harten Klotz: nur die Schichtlinien abnehmen, nicht mehr", "Die Form ist gedruckt; was wegkommt, fehlt dem Profil.");

    public override StepWords CheckSections => new("Jede Profilschablone an ihrer Marke gegen das Blatt halten, beide Seiten, gegen das Licht", "Wo nur an einem Ende Licht durchscheint, ist das Profil verschoben; am anderen Ende schleifen.");

    public override StepWords FillHollows => new("Dellen und feine Löcher mit angedicktem Epoxid füllen, härten lassen, noch einmal schleifen", "Eine Delle stört die Strömung, ein Loch zieht Wasser.");

    public override StepWords SandFair => new("Körnung 180, dann 240, über Kreuz, bis keine Spur der Körnung davor bleibt", "Jedes Papier nimmt die Kratzer des letzten heraus.");

    public override StepWords SandWet => new("Körnung 400, nass, der Länge nach", "Nasser Staub fliegt nicht.");

    public override StepWords LeadingEdge => new("Die Vorderkante mit geschlossenen Augen von der Wurzel zur Spitze abfühlen; Kerben füllen", "An einer Kerbe oder flachen Stelle reißt die Strömung früh ab: Spin-out.");

    public override string Fit => "In den Finnenkasten einpassen";

    public override string FitSentence => "Die Basis muss mit festem Druck hineingehen, einen Schlag brauchen, um herauszukommen, und an ihren Enden anliegen, bevor sie oben aufsteht.";

    public override StepWords GaugeAgain => new("Die Lehre noch einmal in diesem Brett probieren", "Kästen unterscheiden sich von Brett zu Brett, auch beim selben Hersteller.");

    public override StepWords Soap => new("Trockene Seife auf die Basis reiben, leicht anschrauben, wieder herausnehmen", "Wo sie glänzt, liegt sie an.");

    public override StepWords Knock => new("Die Finne wiegen und die Schrauben im Wechsel anziehen; herausnehmen: Es muss einen Schlag mit der Hand brauchen", "Eine Basis, die herausfällt, brummt, wackelt und bricht. Nicht mit den Schrauben hineinziehen.");

    public override string FitHead => "Wenn sie nicht richtig sitzt";

    public override string SymptomColumn => "was zu sehen ist";

    public override string CureColumn => "was zu tun ist";

    public override IReadOnlyList<(string Symptom, string Cure)> FitTable =>
    [
        ("fällt ohne Schrauben heraus", "zu locker: die Seiten mit angedicktem Epoxid gegen den gewachsten Kasten abziehen und feilen, oder größer drucken"),
        ("geht ohne Zug der Schrauben ganz hinein", "sie steht oben auf, oder die Enden liegen nicht an: oben feilen, nicht an den Enden"),
        ("geht nicht hinein", "zu dick oder zu lang: auf flachem Klotz schleifen, wo die Seife glänzt, immer nur wenig"),
        ("steht vom Rumpf ab", "zu lang: die Enden schleifen, wo die Seife glänzt"),
    ];

    public override IReadOnlyList<string> AllowanceBlanks => ["Länge, besser", "Dicke, besser", "Tiefe, besser"];

    public override StepWords BoltLengths => new("An jedem Schraubenloch das Brett über der Basis messen und eintragen; Schrauben wählen, die ganz durch die Mutter reichen", "Eine Schraube, die in der Mutter endet, reißt das Gewinde aus; eine zu lange stößt ans Ende ihrer Bohrung.");

    public override string BoltColumn => "Schraube";

    public override string InsideColumn => "in der Finne";

    public override string BoardColumn => "Brett darüber";

    public override string BuyColumn => "zusammen";

    public override string TorqueColumn => "anziehen mit";

    public override string TorqueLimitColumn => "mehr, und";

    public override string TorqueUnknown => "Wie fest die Schrauben angezogen werden dürfen, wurde nicht berechnet: von Hand, nicht mehr.";

    public override StepWords NoBolts => new("Dieser Kasten hat keine Schrauben vom Deck: die Finne befestigen, wie sein Hersteller sagt", "Nur der Hersteller eines Kastens weiß, was er trägt.");

    public override StepWords PinAndScrew => new("Den Stift hinten in die Basis stecken, die Finne einschieben, vorn in die Plattenmutter schrauben; Stift und Schraube vorher im eigenen Kasten messen", "Kästen dieser Art sind verschieden; die Zahlen sind Anfangswerte.");

    public override string StripSentence(string sheet, string overlap, string overhang) => $"Eine Platte von {sheet}, {overlap} tief im Schlitz, {overhang} hinten überstehend.";

    public override StepWords CutStrip(string length, string width, string over) => new($"Die Platte nach der Schablone zuschneiden, etwa {length} lang und {width} breit, {over} Zugabe; von der Hand weg schneiden", "Beschnitten wird sie, wenn sie sitzt.");

    public override StepWords ClearSlot(string width, string depth) => new($"Den Schlitz mit gefaltetem Schleifpapier säubern: überall {width} breit und {depth} tief", "Harz oder Lack darin hält den Streifen draußen.");

    public override string JoinSentence(Fixing fixing, bool isBonded) => (fixing, isBonded) switch
    {
        (Fixing.ClampRods, true) => "Gewindestangen spannen die Basis ans Blatt, und Harz klebt die Flächen.",
        (Fixing.ClampRods, false) => "Gewindestangen spannen die Basis ans Blatt.",
        (Fixing.ThroughBolts, true) => "Die Schrauben des Bretts halten Basis und Blatt zusammen, und Harz klebt die Flächen.",
        (Fixing.ThroughBolts, false) => "Die Schrauben des Bretts halten Basis und Blatt zusammen.",
        (_, true) => "Harz klebt die Basis ans Blatt.",
        _ => "Basis und Blatt treffen sich an der Rumpfebene.",
    };

    public override StepWords ClampRods(string torques) => new($"Die Stangen in ihre Muttern drehen, Scheiben auflegen, im Wechsel anziehen: {torques}", "Ungleich gespannte Stangen kippen das Blatt.");

    public override string SandSentence(string starboard, string port) => $"Erst nach vollem Aushärten. Steuerbord: {starboard}. Backbord: {port}.";

    public override string FinishOf(Finish finish) => finish switch
    {
        Finish.Polished => "poliert, bis sie glänzt",
        Finish.BarePrint => "gelassen, wie sie vom Drucker kommt",
        _ => "nass geschliffen mit Körnung 400, matt",
    };

    public override StepWords FinishSide(Side side, Finish finish)
    {
        string name = side == Side.Port ? "Backbordseite" : "Steuerbordseite";
        return finish switch
        {
            Finish.Polished => new($"{name}: Körnung 800 und 1200 nass, dann polieren", "Die Strömung wurde für eine polierte Haut berechnet."),
            Finish.BarePrint => new($"{name}: nur abnehmen, was vorsteht", "Die Strömung wurde für den rohen Druck berechnet."),
            _ => new($"{name}: bei Körnung 400 aufhören, matt", "Die Strömung wurde für dieses Finish berechnet."),
        };
    }

    public override StepWords TrailingEdge(string thickness) => new($"Die Hinterkante {thickness} dick lassen, mit kleiner ebener Fläche", "Gerundet kann sie brummen, scharf schneidet sie Schwimmer.");

    public override StepWords StripEdge(string thickness) => new($"Die Kante des Streifens rechtwinklig lassen, {thickness} dick, Ecken gebrochen", "Gerundet kann sie brummen, scharf schneidet sie Schwimmer.");

    public override string Allowances(string length, string thickness, string depth) => $"Diese Basis wurde mit diesen Zugaben gemacht: Länge {length}, Dicke {thickness}, Tiefe {depth}. Aufschreiben, was besser wäre; die nächste Finne für dieses Brett nimmt es (base.length_allowance_mm, base.thickness_allowance_mm, base.depth_allowance_mm).";

    public override string LimitOf(TorqueLimit limit) => limit switch
    {
        TorqueLimit.Bolt => "die Schraube bleibt gedehnt",
        TorqueLimit.NutBearing => "die Mutter sinkt in den Druck",
        TorqueLimit.PullOut => "die Mutter kann mit dem, was über ihr ist, ausreißen",
        TorqueLimit.WallBurst => "die drehende Mutter kann die Wand daneben sprengen",
        _ => "die schräge Basis treibt den Kasten auseinander",
    };

    public override string NoTorque(string least, string greatest) => $"keins tut beides: {least} zum Schließen, höchstens {greatest}";

    public override StepWords Tighten(string byHand) => new($"Die Gewinde fetten und im Wechsel anziehen, nicht fester, als die Tabelle sagt; mit üblichem Schraubendreher erreicht die Hand {byHand}: kurz fassen, mit zwei Fingern", "Schätzungen: Angaben der Hersteller von Brett und Schrauben gehen vor.");

    public override StepWords SealBolts(string washer) => new($"Unter jeden Schraubenkopf auf dem Deck eine weiche Scheibe legen (Neopren, {washer})", "Luft, die durch ein Schraubenloch gesogen wird, führt zum Spin-out.");
}
