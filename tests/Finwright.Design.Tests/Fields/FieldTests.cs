using Finwright.Design.Fields;

namespace Finwright.Design.Tests.Fields;

/// <summary>Every field of the format is described completely.</summary>
public sealed class FieldTests
{
    public static TheoryData<string> RecordNames => [.. Records().Select(form => form.Type.Name)];

    [Theory]
    [MemberData(nameof(RecordNames))]
    public void Every_field_with_a_default_says_why(string record) =>
        Assert.All(FieldsOf(record), field => Assert.True(field.IsRequired || field.Reason.Length > 0, field.Key));

    [Theory]
    [MemberData(nameof(RecordNames))]
    public void Every_number_has_a_range_and_a_default_within_it(string record)
    {
        foreach (Field field in FieldsOf(record).Where(HoldsNumbers))
        {
            Assert.True(field.Minimum <= field.Maximum, field.Key);
            if (field.Default is double or int)
                Assert.InRange(Convert.ToDouble(field.Default, null), field.Minimum!.Value, field.Maximum!.Value);
        }
    }

    [Theory]
    [MemberData(nameof(RecordNames))]
    public void Every_length_area_angle_and_mass_carries_its_unit_in_its_key(string record)
    {
        foreach (Field field in FieldsOf(record).Where(field => field.Form.Kind == FieldKind.Number))
            Assert.True(field.Unit.Length > 0 || field.Key.EndsWith("_ratio", StringComparison.Ordinal) || field.Key.EndsWith("_factor", StringComparison.Ordinal), field.Key);
    }

    [Theory]
    [MemberData(nameof(RecordNames))]
    public void Every_meaning_reason_and_word_is_a_sentence(string record)
    {
        foreach (Field field in FieldsOf(record))
        {
            Assert.EndsWith(".", field.Meaning, StringComparison.Ordinal);
            Assert.True(field.Reason.Length == 0 || field.Reason.EndsWith('.'), field.Key);
            Assert.All(field.Form.Words, word => Assert.EndsWith(".", word.Meaning, StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("SpanMm", "span_mm", "mm")]
    [InlineData("AreaCm2", "area_cm2", "cm²")]
    [InlineData("RakeDegrees", "rake_degrees", "°")]
    public void Key_and_unit_come_from_the_name_of_an_outline_property(string property, string key, string unit)
    {
        Field field = RecordForm.Of(typeof(Outline)).Fields.Single(field => field.PropertyName == property);

        Assert.Equal(key, field.Key);
        Assert.Equal(unit, field.Unit);
    }

    [Theory]
    [InlineData(typeof(Brief), "cruise_speed_m_per_s", "m/s")]
    [InlineData(typeof(Brief), "sail_area_m2", "m²")]
    [InlineData(typeof(Brief), "side_force_n", "N")]
    [InlineData(typeof(Brief), "water_temperature_celsius", "°C")]
    [InlineData(typeof(Print), "filament_density_g_per_cm3", "g/cm³")]
    [InlineData(typeof(Print), "bed_x_mm", "mm")]
    [InlineData(typeof(Print), "infill_percent", "%")]
    [InlineData(typeof(Prove), "mass_kg", "kg")]
    public void Keys_read_well_with_their_units(Type record, string key, string unit) =>
        Assert.Equal(unit, RecordForm.Of(record).Find(key)?.Unit);

    [Theory]
    [InlineData(BoxKind.TwoBoltTapered, "two-bolt-tapered")]
    [InlineData(Fixing.ThroughBolts, "through-bolts")]
    [InlineData(OutlineFamily.SteepRake, "steep-rake")]
    [InlineData(Thread.M6, "M6")]
    [InlineData(Finish.Grit400, "grit-400")]
    [InlineData(Finish.BarePrint, "bare-print")]
    public void Words_are_spelt_with_hyphens_and_threads_as_marked_on_the_bolt(object value, string word) =>
        Assert.Contains(
            Records().SelectMany(form => form.Fields).Where(field => field.Form.Type == value.GetType()),
            field => field.Form.WordFor(value)?.Text == word);

    private static IReadOnlyList<Field> FieldsOf(string record) => Records().Single(form => form.Type.Name == record).Fields;

    private static bool HoldsNumbers(Field field) =>
        field.Form.Kind is FieldKind.Number or FieldKind.WholeNumber || field.Form.Item?.Kind == FieldKind.Point;

    private static List<RecordForm> Records()
    {
        var found = new List<RecordForm> { RecordForm.Of(typeof(FinDesign)) };
        for (int i = 0; i < found.Count; i++)
        {
            IEnumerable<RecordForm> inner = found[i].Fields
                .Select(field => field.Form.Item ?? field.Form)
                .Where(form => form.Kind == FieldKind.Record)
                .Select(form => form.Record);
            found.AddRange(inner.Where(form => !found.Contains(form)).Distinct().ToList());
        }

        return found;
    }
}
