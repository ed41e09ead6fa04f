using Finwright.Assessment.Made;
using Finwright.Geometry;
using Finwright.Geometry.Features;
using Finwright.Geometry.Parts;
using Finwright.Papers.Drawings;
using Finwright.Papers.Words;

namespace Finwright.Papers.Templates;

/// <summary>Where ports are drilled, and what lies inside that the drill must not meet: one view for each side that is drilled.</summary>
internal static class DrillPlacesTemplate
{
    private const double BetweenViews = 20e-3, LeaderReach = 8e-3, LeastPitch = 8e-3, CrossReach = 4e-3;

    // A port that points less than this to one side enters through an edge, as a share of straight.
    private const double Sideways = 0.5;

    /// <summary>A port where it is drilled.</summary>
    /// <param name="Part">The part.</param>
    /// <param name="Number">Its number among the part's ports, from 1.</param>
    /// <param name="Port">The port.</param>
    /// <param name="Outward">Unit vector out of the part, design axes.</param>
    /// <param name="Skin">Where its middle meets the skin, design axes, metres.</param>
    /// <param name="Drilled">How deep the drill goes from the skin, metres.</param>
    private sealed record Place(PartPoured Part, int Number, PouredPort Port, Point3 Outward, Point3 Skin, double Drilled)
    {
        /// <summary>Whether it is seen from one side: a port through an edge is seen from both.</summary>
        public bool IsSeenFrom(bool starboard) => starboard ? Outward.Z > -Sideways : Outward.Z < Sideways;
    }

    public static Template Draw(TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        TemplateSheet sheet = new(fin, tongue);
        Place[] places = [.. fin.Poured?.Parts.SelectMany(part => part.Ports.Select((port, index) => Placed(fin, part, port, index + 1))) ?? []];
        // Paper lies on the part: the starboard side is drawn with the nose to the right, as who looks at it sees it.
        bool starboard = places.Any(place => place.Outward.Z >= Sideways), port = !starboard || places.Any(place => place.Outward.Z <= -Sideways);
        double left = 0;
        foreach (bool side in (bool[])[true, false])
        {
            if (side ? !starboard : !port)
                continue;
            Drawing view = new View(fin, tongue, side).Draw(places);
            DrawnBox box = view.Bounds;
            sheet.Drawing.Add(view, new(left - box.From.X, 0));
            left += box.Width + BetweenViews;
        }

        sheet.Key(TemplatePens.Part, words.OutlineOfParts);
        if (fin.Parts.Cuts.Count > 0)
            sheet.Key(TemplatePens.Cut, words.CutBetweenParts);
        sheet.Key(TemplatePens.Hidden, words.InsideLines);
        sheet.Table(Ports(fin, tongue, places));
        sheet.Table(Inside(fin, tongue));
        return sheet.Finish("drill-places", words.DrillTitle, words.DrillUse);
    }

    private static Place Placed(TemplateFin fin, PartPoured part, PouredPort port, int number) =>
        new(part, number, port, DrillDepth.Outward(part, port), DrillDepth.Skin(fin.Parts, part, port), DrillDepth.FromSkin(fin.Parts, part, port));

    private static double FromLeading(TemplateFin fin, double x) => x - fin.Blade.Outline.LeadingEdge(0);

    private static TemplateTable Ports(TemplateFin fin, Tongue tongue, Place[] places)
    {
        TemplateWords words = tongue.Words.Templates;
        return new(
            ["", words.PartHead, words.PortHead, words.SideHead, words.DiameterHead, words.DrillDepthHead, words.AngleHead, words.FromOriginHead, words.BelowHullHead],
            [true, false, false, false, true, true, true, true, true],
            [.. places.Select(place => (IReadOnlyList<string>)
            [
                tongue.Number(place.Number, 0), tongue.Words.Names.Part(place.Part.Name), words.PortRole(tongue.Words.Names.Port(place.Port.Name), place.Port.IsFeed),
                words.SideOf(place.Outward.Z >= Sideways ? 1 : place.Outward.Z <= -Sideways ? -1 : 0),
                tongue.BareLength(place.Port.Port.Diameter), tongue.BareLength(place.Drilled), tongue.Angle(Math.Asin(Math.Clamp(Math.Abs(place.Outward.Z), 0, 1)), 0),
                tongue.BareLength(FromLeading(fin, place.Skin.X)), tongue.BareLength(place.Skin.Y),
            ])]);
    }

    private static TemplateTable Inside(TemplateFin fin, Tongue tongue)
    {
        TemplateWords words = tongue.Words.Templates;
        return new(
            ["", words.InsideHead, words.DiameterHead, words.FromOriginHead, words.FromHullHead, words.ToHullHead],
            [false, false, true, true, true, true],
            [.. Shown(fin).Select(entry => (IReadOnlyList<string>)
            [
                entry.Mark, tongue.Words.Names.Feature(entry.Feature.Name), entry.Feature.Volume.Diameter > 0 ? tongue.BareLength(entry.Feature.Volume.Diameter) : "",
                tongue.BareLength(FromLeading(fin, entry.Feature.Volume.Middle.X)), tongue.BareLength(entry.Feature.Volume.From.Y), tongue.BareLength(entry.Feature.Volume.To.Y),
            ])]);
    }

    /// <summary>What lies inside, with the mark of the bolt, rod or cavity that it belongs to. A nut's way in is open only while it is printed.</summary>
    private static IEnumerable<(string Mark, PlacedFeature Feature)> Shown(TemplateFin fin)
    {
        PlacedFeature[] features = [.. fin.Solids.Features.Where(feature => feature.Kind != FeatureKind.NutWayIn)];
        string[] owners = [.. features.Select(feature => feature.Owner).Distinct(StringComparer.Ordinal)];
        return features.Select(feature => (((char)('A' + Array.IndexOf(owners, feature.Owner) % 26)).ToString(), feature));
    }

    /// <summary>The fin seen from one side.</summary>
    private sealed class View(TemplateFin fin, Tongue tongue, bool starboard)
    {
        private readonly TemplateSheet _sheet = new(fin, tongue);

        public Drawing Draw(Place[] places)
        {
            TemplateWords words = tongue.Words.Templates;
            Geometry.Outlines.Outline outline = fin.Blade.Outline;
            string layer = starboard ? "starboard" : "port";
            _sheet.Ring(layer, TemplatePens.Part, Seen(fin.Planform.Polyline(TemplateFin.Tolerance)));
            _sheet.Ring(layer, TemplatePens.Part, Seen(fin.Solids.Plan.Ring()));
            foreach (CutPlane cut in fin.Parts.Cuts)
                if (cut.Exits(outline) is { } exits)
                    _sheet.Stroke("cuts", TemplatePens.Cut, Seen([new(outline.LeadingEdge(exits.Leading), exits.Leading), new(outline.TrailingEdge(exits.Trailing), exits.Trailing)]));
            foreach (Dowel dowel in fin.Parts.Dowels)
                _sheet.Ring("inside", TemplatePens.Hidden, Seen(FeatureVolume.Cylinder(dowel.BoreDiameter, dowel.From, dowel.To).SideView()));
            foreach ((_, PlacedFeature feature) in Shown(fin))
                _sheet.Ring("inside", TemplatePens.Hidden, Seen(feature.Volume.SideView()));
            Marks.Cross(_sheet.Drawing, "places", Seen(new Point2(outline.LeadingEdge(0), 0)), CrossReach);
            DrawPorts([.. places.Where(place => place.IsSeenFrom(starboard))]);
            DrawnBox box = _sheet.Drawing.GeometryBounds;
            _sheet.Say(words.SeenFrom(starboard), new(box.From.X, box.From.Y - 5e-3), bold: true);
            _sheet.SayNear("0", Seen(new Point2(outline.LeadingEdge(0), 0)), 3e-3, bold: true);
            foreach (IGrouping<string, (string Mark, PlacedFeature Feature)> owner in Shown(fin).GroupBy(entry => entry.Mark, StringComparer.Ordinal))
            {
                FeatureVolume longest = owner.Select(entry => entry.Feature.Volume).MaxBy(volume => (volume.To - volume.From).Length)!;
                Point3 deeper = longest.To.Y > longest.From.Y ? longest.To : longest.From;
                _sheet.SayNear(owner.Key, Seen(new Point2(deeper.X, deeper.Y)), 4e-3, bold: true);
            }

            return _sheet.Drawing;
        }

        /// <summary>Draws crosses, and words in a column on either side of the fin.</summary>
        private void DrawPorts(Place[] places)
        {
            DrawnBox box = _sheet.Drawing.GeometryBounds;
            foreach (Place place in places)
            {
                Point2 at = Seen(new Point2(place.Skin.X, place.Skin.Y));
                _sheet.Ring("places", TemplatePens.Edge, Rounds.Circle(at, place.Port.Port.Diameter / 2));
                Marks.Cross(_sheet.Drawing, "places", at, CrossReach);
            }

            foreach (bool right in (bool[])[false, true])
            {
                double last = double.NegativeInfinity;
                foreach (Place place in places.Where(place => IsRight(place) == right).OrderBy(place => place.Skin.Y))
                {
                    Point2 at = Seen(new Point2(place.Skin.X, place.Skin.Y));
                    double edge = Edge(place.Skin.Y, right), y = Math.Max(at.Y, last + LeastPitch);
                    last = y;
                    Label(place, at, new(edge + (right ? LeaderReach : -LeaderReach), y), right);
                }
            }
        }

        private void Label(Place place, Point2 at, Point2 elbow, bool right)
        {
            TemplateWords words = tongue.Words.Templates;
            string name = words.PortRole(tongue.Words.Names.Port(place.Port.Name), place.Port.IsFeed);
            Point2 start = at + place.Port.Port.Diameter / 2 / (elbow - at).Length * (elbow - at);
            _sheet.Dimensions.Leader(start, elbow, $"{tongue.Number(place.Number, 0)}  {name}");
            double side = right ? 1 : -1;
            _sheet.Say(words.Drill(tongue.BareLength(place.Port.Port.Diameter), tongue.BareLength(place.Drilled)), new(elbow.X + side * 3.3e-3, elbow.Y + 4.4e-3), right ? TextAnchor.Start : TextAnchor.End);
        }

        private bool IsRight(Place place)
        {
            double x = Seen(new Point2(place.Skin.X, 0)).X;
            return Edge(place.Skin.Y, right: true) - x < x - Edge(place.Skin.Y, right: false);
        }

        /// <summary>Where the fin ends on paper at a depth.</summary>
        private double Edge(double y, bool right)
        {
            bool aft = right != starboard;
            double x = y < 0 ? aft ? fin.Solids.Plan.RearX : fin.Solids.Plan.FrontX
                : aft ? fin.Blade.Outline.TrailingEdge(Math.Min(y, fin.Blade.Span)) : fin.Blade.Outline.LeadingEdge(Math.Min(y, fin.Blade.Span));
            return starboard ? -x : x;
        }

        private Point2 Seen(Point2 p) => starboard ? new(-p.X, p.Y) : p;

        private Point2[] Seen(IEnumerable<Point2> points) => [.. points.Select(Seen)];
    }
}
