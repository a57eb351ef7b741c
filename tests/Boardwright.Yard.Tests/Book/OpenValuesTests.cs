using Boardwright.Yard.Book;
using Boardwright.Yard.Book.Facts;

namespace Boardwright.Yard.Tests.Book;

public sealed class OpenValuesTests
{
    public static TheoryData<Fact> Facts() =>
    [
        new DamageDaysSet("oak", new DamageDays(180, null, 45), new DamageDays(null, 60, null), new DamageDays(null, null, null)),
        new StackReserved("S-01", null),
        new SampleDamaged("C-61", "4", 3263.0, null),
        new Interrupted("C-61", InterruptionCause.PowerCut, new DateTime(2026, 10, 30, 2, 10, 0), null),
        new KilnInstalled("K3", KilnType.RadioFrequencyVacuum, 900, 4.0, 65.6, 18, null, 1, 1219, 4.0, 904, 0.85, 3, 2, 3.5, 48m, []),
    ];

    [Theory, MemberData(nameof(Facts))]
    public void Fact_with_values_left_open_reads_back_as_it_was_written(Fact fact) =>
        Assert.Equal(BookJson.Line(fact), BookJson.Line(BookJson.ReadFact(BookJson.Line(fact))));
}
