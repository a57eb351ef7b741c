using System.Globalization;
using System.Text.RegularExpressions;

using Boardwright.Quantities;

namespace Boardwright.Planning.Batching;

/// <summary>Reads the open data format of constraint models (name = value; whole numbers, lists, lists of sets, two-dimensional arrays) into an instance.</summary>
/// <source id="minizinc-data" locator="assignments of data files"/>
public static partial class DznText
{
    private const int SizeMost = 2_000_000;
    private const int TimeMost = 100_000_000; // sums of two stay whole numbers

    /// <summary>The instance of a text; every fault is named.</summary>
    /// <param name="what">The file, for refusals.</param>
    /// <param name="text">Its text.</param>
    public static Outcome<BatchInstance> Read(string what, string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (text.Length > SizeMost)
        {
            return new Refusal(what, $"{text.Length} characters", $"at most {SizeMost}");
        }

        var values = Comment().Replace(text, "").Split(';').Select(part => part.Split('=', 2)).Where(pair => pair.Length == 2)
            .GroupBy(pair => pair[0].Trim(), StringComparer.Ordinal).ToDictionary(pair => pair.Key, pair => pair.First()[1].Trim(), StringComparer.Ordinal);
        return new Reader(what, values).Instance();
    }

    [GeneratedRegex("%[^\n]*")]
    private static partial Regex Comment();

    [GeneratedRegex(@"\{([^}]*)\}|(\d+)\s*\.\.\s*(\d+)")]
    private static partial Regex Set();

    [GeneratedRegex(@"-?\d+")]
    private static partial Regex Number();

    private sealed class Reader(string what, Dictionary<string, string> values)
    {
        private readonly List<Refusal> refusals = [];

        public Outcome<BatchInstance> Instance()
        {
            var (attributes, machines, jobs, intervals) = (One("a"), One("m"), One("n"), One("s"));
            Range("a", [attributes], 1, 1000);
            Range("m", [machines], 1, BatchTables.OvensMax);
            Range("n", [jobs], 1, 100_000);
            Range("s", [intervals], 1, 10_000);
            if (refusals.Count > 0)
            {
                return new Outcome<BatchInstance>.Refused(refusals);
            }

            var (capacity, initial) = (List("max_cap", machines), List("initState", machines));
            var (from, to) = (List("m_a_s", machines * intervals), List("m_a_e", machines * intervals));
            var (earliest, due, least, most, size, attribute) = (List("earliest_start", jobs), List("latest_end", jobs), List("min_time", jobs), List("max_time", jobs), List("size", jobs), List("attribute", jobs));
            var eligible = Sets("eligible_machine", jobs);
            var (times, costs) = (Square("setup_times", attributes), Square("setup_costs", attributes));
            var weights = new BatchWeights(One("mult_factor_total_runtime"), One("mult_factor_finished_toolate"), One("mult_factor_total_setuptimes"), One("mult_factor_total_setupcosts"), One("upper_bound_integer_objective"));
            Range("initState", initial, 1, attributes);
            Range("attribute", attribute, 1, attributes);
            Range("min_time", least, 1, TimeMost);
            Range("size", size, 0, TimeMost);
            Range("max_cap", capacity, 0, TimeMost);
            Range("earliest_start", earliest, 0, TimeMost);
            Range("m_a_s", from, 0, TimeMost);
            Range("m_a_e", to, 0, TimeMost);
            Range("setup_times", [.. times.Cast<int>()], 0, TimeMost);
            Range("setup_costs", [.. costs.Cast<int>()], 0, TimeMost);
            for (var job = 0; job < jobs && refusals.Count == 0; job++)
            {
                Range($"max_time of job {job + 1}", [most[job]], least[job], TimeMost);
            }

            Range("eligible_machine", [.. eligible.SelectMany(set => set)], 1, machines);
            if (refusals.Count > 0)
            {
                return new Outcome<BatchInstance>.Refused(refusals);
            }

            return new BatchInstance(
                [.. Enumerable.Range(0, machines).Select(k => new BatchOven(capacity[k], initial[k] - 1, [.. Enumerable.Range(0, intervals).Select(i => (from[k * intervals + i], to[k * intervals + i])).Where(open => open.Item2 > open.Item1)]))],
                [.. Enumerable.Range(0, jobs).Select(j => new BatchJob(attribute[j] - 1, size[j], least[j], most[j], earliest[j], due[j], [.. eligible[j].Select(k => k - 1).Order()]))],
                times, costs, weights);
        }

        private int One(string name) => List(name, 1) is [var value] ? value : 0;

        private int[] List(string name, int count)
        {
            var numbers = values.TryGetValue(name, out var text) ? Numbers(name, text) : [];
            return numbers.Length == count ? numbers : Refuse(name, text is null ? "nothing" : $"{numbers.Length} numbers", $"{count} whole {(count == 1 ? "number" : "numbers")}", new int[count]);
        }

        private int[] Numbers(string name, string text) => [.. Number().Matches(text).Select(number => Whole(name, number.Value))];

        private int Whole(string name, string digits) => int.TryParse(digits, CultureInfo.InvariantCulture, out var whole) ? whole
            : Refuse(name, digits, $"whole numbers from {int.MinValue} to {int.MaxValue}", 0);

        private List<int[]> Sets(string name, int count)
        {
            var sets = values.TryGetValue(name, out var text) ? Set().Matches(text).Select(set => Members(name, set)).ToList() : [];
            return sets.Count == count ? sets : Refuse<List<int[]>>(name, $"{sets.Count} sets", $"{count} sets, such as {{1,2}}", [.. Enumerable.Range(0, count).Select(_ => Array.Empty<int>())]);
        }

        private int[] Members(string name, Match set)
        {
            if (!set.Groups[2].Success)
            {
                return [.. Numbers(name, set.Groups[1].Value).Distinct()];
            }

            var (low, high) = (Whole(name, set.Groups[2].Value), Whole(name, set.Groups[3].Value));
            return high - (long)low is >= 0 and < BatchTables.OvensMax ? [.. Enumerable.Range(low, high - low + 1)]
                : Refuse<int[]>(name, set.Value, $"a range of at most {BatchTables.OvensMax} machines", []);
        }

        // A last row may stand for "nothing follows": it is not used.
        private int[,] Square(string name, int count)
        {
            var numbers = values.TryGetValue(name, out var text) ? Numbers(name, text) : [];
            var square = new int[count, count];
            if (numbers.Length != count * count && numbers.Length != (count + 1) * count)
            {
                return Refuse(name, $"{numbers.Length} numbers", $"{count} rows of {count}, and perhaps one more row", square);
            }

            for (var index = 0; index < count * count; index++)
            {
                square[index / count, index % count] = numbers[index];
            }

            return square;
        }

        private void Range(string name, IReadOnlyList<int> numbers, int low, int high)
        {
            foreach (var wrong in numbers.Where(number => number < low || number > high).Take(1))
            {
                refusals.Add(new($"{what}, {name}", wrong.ToString(CultureInfo.InvariantCulture), $"{low} to {high}"));
            }
        }

        private T Refuse<T>(string name, string given, string accepted, T instead)
        {
            refusals.Add(new($"{what}, {name}", given, accepted));
            return instead;
        }
    }
}
