using System.Globalization;
using System.Text;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace Boardwright.Yard.Wire;

/// <summary>An answer as aligned text with units, for people at a terminal. The same keys as the JSON form, in words.</summary>
public static class PlainText
{
    public static string Of(object answer)
    {
        var text = new StringBuilder();
        Write(text, WireJson.Node(answer), "");
        return text.ToString();
    }

    private const int CurveRows = 12;

    private static void Write(StringBuilder text, JsonNode node, string indent)
    {
        switch (node)
        {
            case JsonObject record:
                WriteObject(text, record, indent);
                break;
            case JsonArray rows:
                WriteTable(text, rows, indent);
                break;
            default:
                text.Append(indent).AppendLine(Value(node));
                break;
        }
    }

    private static void WriteObject(StringBuilder text, JsonObject record, string indent)
    {
        var width = record.Select(pair => UnitSuffix.Part(pair.Key).Label.Length).DefaultIfEmpty().Max();
        foreach (var (key, value) in record)
        {
            var (label, unit) = UnitSuffix.Part(key);
            if (IsNested(value))
            {
                var (rows, words) = key == "curve" && value is JsonArray curve ? Thinned(curve) : (value!, "");
                text.Append(indent).Append(label).AppendLine(unit.Length == 0 ? $"{words}:" : $" ({unit}){words}:");
                Write(text, rows, indent + "  ");
            }
            else
            {
                text.Append(indent).Append(label.PadRight(width)).Append("  ").AppendLine(WithUnit(value, unit));
            }
        }
    }

    // A curve of many rows would push the answer off the screen: some of it, its end always, and where the rest is.
    private static (JsonNode Rows, string Words) Thinned(JsonArray curve)
    {
        var step = (int)Math.Ceiling((curve.Count - 1) / (double)(CurveRows - 1));
        return step <= 1 ? (curve, "") : (new JsonArray([.. Enumerable.Range(0, curve.Count).Where(row => row % step == 0 || row == curve.Count - 1).Select(row => curve[row]!.DeepClone())]), $" (one row in {step} of {curve.Count}; all with --json)");
    }

    private static void WriteTable(StringBuilder text, JsonArray rows, string indent)
    {
        if (rows.FirstOrDefault() is not JsonObject first || rows.Any(row => row is JsonObject record && record.Any(cell => IsNested(cell.Value))))
        {
            foreach (var row in rows)
            {
                Write(text, row!, indent);
                if (row is JsonObject)
                {
                    text.AppendLine();
                }
            }

            return;
        }

        var keys = first.Select(cell => cell.Key).ToList();
        var lines = new List<string[]> { keys.Select(Heading).ToArray() };
        lines.AddRange(rows.Select(row => keys.Select(key => Value(((JsonObject)row!)[key])).ToArray()));
        var widths = keys.Select((_, column) => lines.Max(line => line[column].Length)).ToArray();
        foreach (var line in lines)
        {
            text.Append(indent).AppendLine(string.Join("  ", line.Select((cell, column) => cell.PadLeft(widths[column]))).TrimEnd());
        }
    }

    // Lists of plain values stay on one line.
    private static bool IsNested(JsonNode? value) => value is JsonObject || (value is JsonArray list && list.Any(item => item is JsonObject or JsonArray));

    private static string Heading(string key)
    {
        var (label, unit) = UnitSuffix.Part(key);
        return unit.Length == 0 ? label : $"{label}, {unit}";
    }

    private static string WithUnit(JsonNode? value, string unit) => value is JsonArray { Count: 0 } ? "none" : value is null || unit.Length == 0 ? Value(value) : $"{Value(value)} {unit}";

    private static string Value(JsonNode? value) => value switch
    {
        null => "-",
        JsonArray list => string.Join(", ", list.Select(Value)),
        _ => value.GetValueKind() switch
        {
            JsonValueKind.True => "yes",
            JsonValueKind.False => "no",
            JsonValueKind.Number => Number(value.GetValue<double>()),
            _ => value.ToString(),
        },
    };

    // Five figures tell a mill all it can use; whole numbers stay whole.
    private static string Number(double number)
    {
        if (number == Math.Round(number) && Math.Abs(number) < 1e9)
        {
            return number.ToString("#,0", CultureInfo.InvariantCulture);
        }

        var digits = number == 0.0 ? 0 : Math.Clamp(4 - (int)Math.Floor(Math.Log10(Math.Abs(number))), 0, 12);
        return number.ToString(digits == 0 ? "#,0" : "#,0." + new string('#', Math.Min(digits, 7)), CultureInfo.InvariantCulture);
    }
}
