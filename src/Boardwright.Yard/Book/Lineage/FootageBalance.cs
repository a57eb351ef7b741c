namespace Boardwright.Yard.Book.Lineage;

/// <summary>Where all the footage of a thing is now. What it held is what is here, what left and what was lost: the balance closes.</summary>
/// <remarks>Board feet as measured at each change, on the basis of that change: nothing is converted and nothing added back.</remarks>
/// <param name="Start">Held at first: of a log what was sawn from it, of a stack its card.</param>
/// <param name="Stacked">Still on stacks and in tables.</param>
/// <param name="Packed">In packs that are here.</param>
/// <param name="Gone">Left on a load, or taken for something else.</param>
/// <param name="Dried">Lost in kilns: shrinkage and falldown between loading and unloading.</param>
/// <param name="Planed">Lost in planing.</param>
/// <param name="WrittenOff">Falldown and miscounts found at a count, or when a stack was said to be empty; less than nothing where more was found.</param>
/// <method page="docs/methods/cost-so-far.md"/>
public sealed record FootageBalance(double Start, double Stacked, double Packed, double Gone, double Dried, double Planed, double WrittenOff)
{
    /// <summary>What the parts leave unexplained: nothing but the rounding of a computer.</summary>
    public double Open => Start - Stacked - Packed - Gone - Dried - Planed - WrittenOff;

    /// <summary>The balance of some steps and all that became of them.</summary>
    public static FootageBalance Of(WoodWay way, IEnumerable<string> keys)
    {
        ArgumentNullException.ThrowIfNull(way);
        var self = keys.ToHashSet(StringComparer.Ordinal);
        var first = self.Where(key => !way.Into(key).Any(flow => self.Contains(flow.From))).ToHashSet(StringComparer.Ordinal);
        var parts = way.Forward(first).Select(pair => (Step: way.Steps[pair.Key], Part: pair.Value)).ToList();
        return new(
            first.Sum(key => way.Steps[key].Bf),
            Sum(step => step.Form == WoodForm.Pack ? 0.0 : step.LeftBf),
            Sum(step => step.Form == WoodForm.Pack ? step.LeftBf : 0.0),
            Sum(step => step.Form is WoodForm.Shipped or WoodForm.Taken ? step.Bf : 0.0),
            Sum(step => step.Form == WoodForm.FromKiln ? LostInto(step) : 0.0),
            Sum(step => step.Form == WoodForm.Dressed ? LostInto(step) : 0.0),
            Sum(step => step.LostBf + (step.Form is WoodForm.FromKiln or WoodForm.Dressed ? 0.0 : LostInto(step))));

        double Sum(Func<WoodStep, double> value) => parts.Sum(one => value(one.Step) * one.Part);

        double LostInto(WoodStep step) => first.Contains(step.Key) ? 0.0 : way.LostInto(step.Key);
    }
}
