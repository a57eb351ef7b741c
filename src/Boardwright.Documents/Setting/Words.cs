namespace Boardwright.Documents.Setting;

/// <summary>States as words; a shade alone would not survive the printer.</summary>
internal static class Words
{
    public static string Of(HeatTreatment treatment) => treatment switch
    {
        HeatTreatment.Yes => "yes",
        HeatTreatment.No => "no",
        _ => "unproven",
    };

    public static string Of(FootageBasis basis) => basis == FootageBasis.Net ? "net" : "gross";
}
