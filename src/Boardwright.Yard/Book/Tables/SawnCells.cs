using System.Globalization;
using System.Text.RegularExpressions;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Book.Tables;

/// <summary>Boards off a log and its plan in cells of a table: 3 of 4/4 x 8 in x 8 ft; and 12 of 4/4, 96 bf, 412.8 money.</summary>
internal static partial class SawnCells
{
    public static IEnumerable<string>? Of(IReadOnlyList<SawnBoards>? boards) =>
        boards?.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Pieces} of {one.ThicknessQuarters}/4 x {one.WidthIn:R} in x {one.LengthFt:R} ft"));

    public static IEnumerable<string>? Of(SawnPlan? plan) =>
        plan?.Parts.Select(one => string.Create(CultureInfo.InvariantCulture, $"{one.Pieces} of {one.ThicknessQuarters}/4, {one.Bf:R} bf, {one.Money:R} money"));

    public static IReadOnlyList<SawnBoards> Boards(TableRow row) => Each(row, "boards", BoardForm(), "such as 3 of 4/4 x 8 in x 8 ft", numbers => new SawnBoards((int)numbers[1], numbers[2], numbers[3], (int)numbers[0]));

    public static SawnPlan Plan(TableRow row) => new(
        row.TextOrNull("plan_pattern") ?? "", Each(row, "plan_parts", PartForm(), "such as 12 of 4/4, 96 bf, 412.8 money", numbers => new SawnPlanPart((int)numbers[1], (int)numbers[0], numbers[2], numbers[3])), row.NumberOrNull("sawn_money") ?? 0.0);

    private static List<T> Each<T>(TableRow row, string column, Regex form, string accepted, Func<double[], T> make)
        where T : class
    {
        var read = new List<T>();
        foreach (var text in row.List(column))
        {
            var match = form.Match(text);
            if (match.Success)
                read.Add(make([.. match.Groups.Values.Skip(1).Select(group => double.Parse(group.Value, CultureInfo.InvariantCulture))]));
            else
                row.Refuse(column, text, accepted, "");
        }

        return read;
    }

    [GeneratedRegex(@"^(\d{1,5}) of (\d{1,2})/4 x (\d+(?:\.\d+)?(?:E[+-]?\d+)?) in x (\d+(?:\.\d+)?(?:E[+-]?\d+)?) ft$", RegexOptions.CultureInvariant)]
    private static partial Regex BoardForm();

    [GeneratedRegex(@"^(\d{1,5}) of (\d{1,2})/4, (\d+(?:\.\d+)?(?:E[+-]?\d+)?) bf, (\d+(?:\.\d+)?(?:E[+-]?\d+)?) money$", RegexOptions.CultureInvariant)]
    private static partial Regex PartForm();
}
