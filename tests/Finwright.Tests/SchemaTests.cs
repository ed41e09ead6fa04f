using System.Text.Json;

namespace Finwright.Tests;

public sealed class SchemaTests
{
    [Fact]
    public void Schema_is_json_that_describes_every_section_of_the_design_file()
    {
        JsonElement properties = ProgramRun.Of("schema").Json().GetProperty("properties");
        foreach (string section in (string[])["name", "brief", "shape", "base", "hardware", "parts", "print", "pour", "prove"])
            Assert.True(properties.TryGetProperty(section, out _), section);
    }
}
