using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using Boardwright.Quantities;
using Boardwright.Yard.Commands;

namespace Boardwright.Yard.UseCases;

/// <summary>A figure of the house that the computation asks for: a price, a rate, a share, a limit.</summary>
/// <param name="Group">Where it stands on the page.</param>
/// <param name="Name">Its name in the book; * stands for a species, a thickness, a letter.</param>
/// <param name="Words">What it is; {0} is what stands for the first *.</param>
/// <param name="Unit">The unit it is kept in; empty for a bare number.</param>
/// <param name="Usual">What is reckoned with where nobody set it; null where it is then left out.</param>
/// <param name="Only">All it may be; empty where any number may.</param>
public sealed record HouseFigure(string Group, string Name, string Words, string Unit, double? Usual, IReadOnlyList<double> Only)
{
    private Regex? pattern;

    /// <summary>Every figure, in the order of the page.</summary>
    public static IReadOnlyList<HouseFigure> All { get; } = Read();

    /// <summary>The figure of a name in the book; null for a name that nothing asks for.</summary>
    public static HouseFigure? Of(string name) => All.FirstOrDefault(figure => figure.Name == name) ?? All.FirstOrDefault(figure => figure.IsMany && figure.Pattern.IsMatch(name));

    /// <summary>It stands for several, one each species or thickness.</summary>
    public bool IsMany => Name.Contains('*', StringComparison.Ordinal);

    /// <summary>What a name of this figure is, in words.</summary>
    public string Said(string name) => string.Format(CultureInfo.InvariantCulture, Words, [.. Pattern.Match(name).Groups.Values.Skip(1).Select(part => part.Value.Replace('_', ' ')).Append("").Append("")]);

    private Regex Pattern => pattern ??= new("^" + Regex.Escape(Name).Replace("\\*", "(.+?)", StringComparison.Ordinal) + "$", RegexOptions.CultureInvariant);

    private static IReadOnlyList<HouseFigure> Read()
    {
        using var stream = typeof(HouseFigure).Assembly.GetManifestResourceStream("house-figures.csv") ?? throw new InvalidOperationException("No built-in table 'house-figures.csv'.");
        using var reader = new StreamReader(stream, Encoding.UTF8);
        return CsvTable.Read("house-figures.csv", reader.ReadToEnd(), "group", "name", "words", "unit", "usual", "only") is Outcome<CsvTable>.Done(var table)
            ? [.. table.Rows.Select(row => new HouseFigure(row.Text("group"), row.Text("name"), row.Text("words"), row.Text("unit"),
                row.Text("usual") is { Length: > 0 } usual ? double.Parse(usual, CultureInfo.InvariantCulture) : null,
                [.. row.Text("only").Split('/', StringSplitOptions.RemoveEmptyEntries).Select(value => double.Parse(value, CultureInfo.InvariantCulture))]))]
            : throw new InvalidOperationException("The built-in table of figures cannot be read.");
    }
}
