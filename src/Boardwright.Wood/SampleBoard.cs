using System.Globalization;
using Boardwright.Quantities;

namespace Boardwright.Wood;

/// <summary>A sample board as cut: the moisture of its sections and the dry weight calculated from them.</summary>
/// <param name="Sections">Moisture content of each section.</param>
/// <param name="Average">Their mean, taken for the board between them.</param>
/// <param name="CalculatedDry">What the sample would weigh oven-dry, by calculation.</param>
public sealed record SampleBoardCut(IReadOnlyList<MoistureContent> Sections, MoistureContent Average, Mass CalculatedDry);

/// <summary>Kiln samples: boards that are weighed instead of dried in the oven.</summary>
/// <remarks>
/// <para>Equations: section M = 100 (wet/dry - 1); calculated oven-dry weight OD = W0/(1 + M0/100) with M0 the mean of the sections; any later
/// day M = 100 (W/OD - 1). An error of e points in M0 becomes e (1 + M/100)/(1 + M0/100) points later.</para>
/// <para>When wood is lost the dry weight falls in the proportion of the weights just after and just before: the moisture has not changed.</para>
/// </remarks>
/// <source id="wengert-drying-oak" locator="step 3B"/>
/// <method page="docs/methods/moisture-content.md"/>
public static class SampleBoard
{
    /// <summary>Calculates a sample's dry weight from the sections cut beside it.</summary>
    /// <param name="wet">Section weights when cut; refusals call them "wet".</param>
    /// <param name="dry">The same sections out of the oven, in the same order; refusals call them "dry".</param>
    /// <param name="sample">Weight of the sample board when the sections were cut; refusals call it "sample".</param>
    public static Outcome<SampleBoardCut> Cut(IReadOnlyList<Mass> wet, IReadOnlyList<Mass> dry, Mass sample)
    {
        if (wet.Count == 0 || wet.Count != dry.Count)
            return new Refusal("dry", Count(dry.Count), $"one dry weight for each wet weight ({Count(wet.Count)})");

        if (sample.Grams <= 0.0)
            return new Refusal("sample", OvenMoisture.Grams(sample), "a weight above 0 g");

        var refusals = new List<Refusal>();
        var sections = new List<MoistureContent>();
        for (var index = 0; index < wet.Count; index++)
        {
            switch (OvenMoisture.Of("wet", wet[index], "dry", dry[index]))
            {
                case Outcome<MoistureContent>.Done(var moisture):
                    sections.Add(moisture);
                    break;
                case Outcome<MoistureContent>.Refused(var reasons):
                    refusals.AddRange(reasons);
                    break;
            }
        }

        if (refusals.Count > 0)
            return new Outcome<SampleBoardCut>.Refused(refusals);

        var average = MoistureContent.FromFraction(sections.Average(section => section.Fraction));
        return new SampleBoardCut(sections, average, OvenMoisture.DryMass(sample, average));
    }

    /// <summary>Moisture content of a sample by its weight today; refusals call the weights "current" and "calculated-dry".</summary>
    public static Outcome<MoistureContent> Current(Mass calculatedDry, Mass current) => OvenMoisture.Of("current", current, "calculated-dry", calculatedDry);

    /// <summary>The calculated dry weight after a piece was lost, from the weights just before and just after.</summary>
    /// <returns>The new dry weight, or a refusal of "after-loss" when it is nothing or more than before.</returns>
    public static Outcome<Mass> AfterLoss(Mass calculatedDry, Mass before, Mass after) =>
        after.Grams > 0.0 && after <= before
            ? calculatedDry * (after / before)
            : new Refusal("after-loss", OvenMoisture.Grams(after), $"more than 0 g and at most the weight before the loss, {OvenMoisture.Grams(before)}");

    private static string Count(int count) => string.Create(CultureInfo.InvariantCulture, $"{count} weight{(count == 1 ? "" : "s")}");
}
