using System.Text.RegularExpressions;
using System.Xml.Linq;

namespace Boardwright.Architecture.Tests;

/// <summary>The drawing in docs/architecture.md cannot lie: its table is compared with the project files.</summary>
public partial class DependencyTests
{
    private sealed record Project(string Kind, IReadOnlyList<string> DependsOn);

    [Fact]
    public void The_table_of_the_drawing_equals_the_project_files()
    {
        var drawn = Drawn();
        var built = Built();

        Assert.Equal(built.Keys.Order(), drawn.Keys.Order());
        Assert.All(built, project => Assert.Equal(
            $"{project.Key}: {project.Value.Kind}: {string.Join(", ", project.Value.DependsOn)}",
            $"{project.Key}: {drawn[project.Key].Kind}: {string.Join(", ", drawn[project.Key].DependsOn)}"));
    }

    [Fact]
    public void Core_projects_depend_on_core_projects_only()
    {
        var built = Built();

        Assert.All(built.Where(project => project.Value.Kind == "Core"), project => Assert.All(project.Value.DependsOn, other => Assert.Equal("Core", built[other].Kind)));
    }

    [Fact]
    public void Core_projects_carry_the_list_of_banned_symbols()
    {
        var core = XDocument.Parse(Checkout.Read("Directory.Build.targets")).Descendants("ItemGroup").Single(group => group.Attribute("Condition")?.Value == "'$(BoardwrightKind)' == 'Core'");

        Assert.Contains(core.Elements("PackageReference"), e => e.Attribute("Include")?.Value == "Microsoft.CodeAnalysis.BannedApiAnalyzers");
        Assert.Contains(core.Elements("AdditionalFiles"), e => e.Attribute("Include")?.Value.EndsWith("BannedSymbols.txt", StringComparison.Ordinal) == true);
        string[] banned = ["N:System.IO;", "N:System.Net;", "T:System.Console;", "T:System.Environment;", "P:System.DateTime.Now;", "P:System.DateTime.UtcNow;", "P:System.Random.Shared;", "P:System.Globalization.CultureInfo.CurrentCulture;"];
        var list = Checkout.Read("BannedSymbols.txt");
        Assert.All(banned, symbol => Assert.Contains(symbol, list, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("Google.OrTools", "Boardwright.Planning.Solver")]
    [InlineData("PDFsharp", "Boardwright.Documents")]
    [InlineData("MQTTnet", "Boardwright.Sensors")]
    public void A_heavy_package_is_named_in_one_room(string package, string room)
    {
        var users = Checkout.Files("src/", ".csproj").Where(path => Checkout.Read(path).Contains($"\"{package}\"", StringComparison.Ordinal)).Select(Path.GetFileNameWithoutExtension);

        Assert.Equal([room], users);
    }

    private static Dictionary<string, Project> Built() => Checkout.Files("src/", ".csproj").ToDictionary(
        path => Path.GetFileNameWithoutExtension(path),
        path =>
        {
            var xml = XDocument.Parse(Checkout.Read(path));
            return new Project(
                xml.Descendants("BoardwrightKind").Single().Value,
                [.. xml.Descendants("ProjectReference").Select(e => Path.GetFileNameWithoutExtension(e.Attribute("Include")!.Value.Replace('\\', '/'))).Order(StringComparer.Ordinal)]);
        });

    private static Dictionary<string, Project> Drawn() => Checkout.Lines("docs/architecture.md").Select(line => TableRow().Match(line)).Where(m => m.Success).ToDictionary(
        m => m.Groups[1].Value,
        m => new Project(m.Groups[2].Value, [.. Code().Matches(m.Groups[3].Value).Select(name => "Boardwright." + name.Groups[1].Value).Order(StringComparer.Ordinal)]));

    [GeneratedRegex(@"^\| `(Boardwright\.[A-Za-z.]+)` \| (Core|App) \| [^|]+ \| ([^|]+) \|$")]
    private static partial Regex TableRow();

    [GeneratedRegex("`([A-Za-z.]+)`")]
    private static partial Regex Code();
}
