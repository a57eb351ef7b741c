using Boardwright.Documents.Packs;
using Boardwright.Quantities;

namespace Boardwright.Documents.Tests;

/// <summary>Papers of the demonstration yard; all invented.</summary>
internal static class Examples
{
    public const string Yard = "Ollenwhin Sawyard";

    public const string LongName = "The Grand Confraternity of Travelling Cabinetmakers, Joiners and Donaudampfschifffahrtsgesellschaftskapitänsmützenmacher of Ollenwhin Upper Valley and Surroundings";

    public static PackTagContent Tag { get; } = new()
    {
        Yard = Yard,
        Pack = "P-118",
        Species = "black cherry",
        Thickness = "4/4",
        Surface = "rough",
        Grade = "No. 1 Common and better",
        Pieces = 36,
        ShortestPiece = Length.FromFeet(8),
        LongestPiece = Length.FromFeet(14),
        Footage = BoardFeet.From(218),
        Basis = FootageBasis.Net,
        FootageRule = "surface measure, board by board",
        Volume = BoardFeet.From(218).NominalVolume,
        Weight = Mass.FromKilograms(285),
        MoistureLow = MoistureContent.FromPercent(6.4),
        MoistureHigh = MoistureContent.FromPercent(7.8),
        MoistureBasis = "pin meter, 20 boards, wood at 66 °F, 11 Nov",
        Charge = "D-41",
        HeatTreatment = HeatTreatment.Yes,
        HeatTreatmentProof = "Coldest core 56 °C or more for 3 h 10 min, 10 Nov. A record, not an official mark.",
        Order = "O-301",
        Customer = "Brindle Toad Cabinet Shop",
        Date = new DateOnly(2026, 11, 12),
        TalliedBy = "Bram",
        CodeText = "http://192.168.1.20:5080/tally/P-118",
    };

    public static PackTagContent BareTag { get; } = Tag with
    {
        Pack = "P-131",
        Species = "silver maple",
        Weight = null,
        MoistureLow = null,
        MoistureHigh = null,
        MoistureBasis = null,
        Charge = null,
        HeatTreatment = HeatTreatment.Unproven,
        HeatTreatmentProof = "Tag lost 30 Oct: the chain to a charge is broken.",
        Order = null,
        Customer = null,
        Owner = "Y-71",
        Basis = FootageBasis.Gross,
        CodeText = "P-131",
    };

    public static PackTagContent WetTag { get; } = Tag with
    {
        MoistureLow = MoistureContent.FromPercent(13.4),
        MoistureHigh = MoistureContent.FromPercent(16.6),
        MoistureBasis = "pin meter, corrected, 30 Oct 2026, mean and two deviations",
        MoistureOrdered = "wetter than ordered: 6 to 8 %",
        IsWetter = true,
        Charge = null,
        HeatTreatment = HeatTreatment.No,
        HeatTreatmentProof = "saw no kiln",
    };

    public static PackTagContent LongTag { get; } = Tag with
    {
        Yard = LongName,
        Pack = "P-118-" + LongName,
        Species = LongName,
        Grade = LongName,
        FootageRule = LongName,
        MoistureBasis = LongName,
        Charge = LongName,
        HeatTreatmentProof = LongName,
        Order = LongName,
        Customer = LongName,
        Owner = LongName,
        TalliedBy = LongName,
    };
}
