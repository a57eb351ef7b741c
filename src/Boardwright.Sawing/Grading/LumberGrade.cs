namespace Boardwright.Sawing;

/// <summary>The standard hardwood lumber grades, best first.</summary>
public enum LumberGrade
{
    /// <summary>FAS: both faces.</summary>
    Fas,

    /// <summary>FAS one face: the better face FAS, the reverse not below No. 1 Common.</summary>
    FasOneFace,

    /// <summary>Selects: as FAS one face, from smaller boards.</summary>
    Selects,

    /// <summary>No. 1 Common.</summary>
    No1Common,

    /// <summary>No. 2A Common: clear-face cuttings.</summary>
    No2ACommon,

    /// <summary>No. 2B Common: sound cuttings.</summary>
    No2BCommon,

    /// <summary>No. 3A Common.</summary>
    No3ACommon,

    /// <summary>No. 3B Common.</summary>
    No3BCommon,

    /// <summary>Below No. 3B Common.</summary>
    Below,
}

/// <summary>How grades are called.</summary>
public static class LumberGrades
{
    private static readonly (LumberGrade Grade, string Brief, string Name)[] All =
    [
        (LumberGrade.Fas, "FAS", "FAS"), (LumberGrade.FasOneFace, "F1F", "FAS one face"), (LumberGrade.Selects, "Selects", "Selects"), (LumberGrade.No1Common, "1C", "No. 1 Common"),
        (LumberGrade.No2ACommon, "2A", "No. 2A Common"), (LumberGrade.No2BCommon, "2B", "No. 2B Common"), (LumberGrade.No3ACommon, "3A", "No. 3A Common"),
        (LumberGrade.No3BCommon, "3B", "No. 3B Common"), (LumberGrade.Below, "below grade", "below No. 3B Common"),
    ];

    /// <summary>As price lists write it, such as 1C.</summary>
    public static string Brief(this LumberGrade grade) => All[(int)grade].Brief;

    /// <summary>In words.</summary>
    public static string Name(this LumberGrade grade) => All[(int)grade].Name;

    /// <summary>The grade a price list means; null for a word that is none.</summary>
    public static LumberGrade? Find(string text)
    {
        foreach (var (grade, brief, name) in All)
        {
            if (text.Equals(brief, StringComparison.OrdinalIgnoreCase) || text.Equals(name, StringComparison.OrdinalIgnoreCase))
                return grade;
        }

        return null;
    }
}
