using Boardwright.Quantities;
using Boardwright.Yard.Book;
using Boardwright.Yard.Commands;
using Boardwright.Yard.UseCases;

namespace Boardwright.Cli;

/// <summary>Makes the copy of the day while the program serves: at the start, and looks again every hour.</summary>
internal sealed class DailyCopies(YardBook book, BookPlace place, string root, TimeProvider clock, TextWriter error) : BackgroundService
{
    private static readonly TimeSpan LookAgain = TimeSpan.FromHours(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // Not in the way of the first page.
        await Task.Yield();
        using var hours = new PeriodicTimer(LookAgain, clock);
        do
        {
            var outcome = DailyCopy.Make(book, place, root, DateOnly.FromDateTime(clock.GetLocalNow().DateTime));
            switch (outcome)
            {
                case Outcome<Backup.Answer>.Refused refused:
                    error.WriteLine($"No copy of the day was made: {string.Join("; ", refused.Reasons)}");
                    break;
                case Outcome<Backup.Answer>.NoAnswer none:
                    error.WriteLine(none.Why);
                    break;
            }
        }
        while (await hours.WaitForNextTickAsync(stoppingToken));
    }
}
