using Boardwright.Planning;
using Boardwright.Quantities;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli.Tests;

/// <summary>Plans kept beside the book come back as they were, and a file that cannot be read is no plan.</summary>
public sealed class PlanShelfFileTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("shelf").FullName;

    private string Place => Path.Combine(folder, "plans.json");

    [Fact]
    public void Plans_come_back_as_they_were()
    {
        KeptPlan[] kept =
        [
            new(3, 12, new(2026, 11, 1), 42, new([new("K1", ["S-01", "S-07"], null, 33, 1, 300), new("K2", ["S-09"], "D-41", 0, 0, 80)], [new("O-301", "S-07", BoardFeet.From(123.4))])),
            new(4, 15, new(2026, 11, 2), 49, new([], [])),
        ];
        new PlanShelfFile(Place).Write(kept);

        var read = new PlanShelfFile(Place).Read();

        Assert.Equal(kept.Select(one => (one.Number, one.Entries, one.Today, one.Days)), read.Select(one => (one.Number, one.Entries, one.Today, one.Days)));
        Assert.Equal(kept[0].Plan.Servings, read[0].Plan.Servings);
        Assert.Equal(kept[0].Plan.Charges.Select(Words), read[0].Plan.Charges.Select(Words));
    }

    [Fact]
    public void Plan_written_before_plans_were_counted_is_the_first()
    {
        File.WriteAllText(Place, "[{\"entries\":12,\"today\":\"2026-11-01\",\"days\":42,\"charges\":[],\"servings\":[]}]");

        Assert.Equal(1, Assert.Single(new PlanShelfFile(Place).Read()).Number);
    }

    [Theory]
    [InlineData("")]
    [InlineData("{")]
    [InlineData("[{\"entries\": 3}]")]
    [InlineData("[null]")]
    [InlineData("{\"plans\": []}")]
    public void File_that_cannot_be_read_is_no_plan(string text)
    {
        File.WriteAllText(Place, text);

        Assert.Empty(new PlanShelfFile(Place).Read());
    }

    [Fact]
    public void No_file_is_no_plan_and_a_folder_that_is_gone_keeps_none()
    {
        var shelf = new PlanShelfFile(Path.Combine(folder, "gone", "plans.json"));

        shelf.Write([new(1, 1, new(2026, 11, 2), 42, new([], []))]);

        Assert.Empty(shelf.Read());
    }

    public void Dispose() => Directory.Delete(folder, recursive: true);

    private static string Words(Charge charge) => $"{charge.Kiln} {string.Join(",", charge.Stacks)} {charge.Started} {charge.LoadStep} {charge.WarmUp} {charge.UnloadStep}";
}
