using System.Globalization;
using BenchmarkDotNet.Columns;
using BenchmarkDotNet.Configs;
using BenchmarkDotNet.Diagnosers;
using BenchmarkDotNet.Jobs;
using BenchmarkDotNet.Loggers;
using BenchmarkDotNet.Running;
using BenchmarkDotNet.Toolchains.InProcess.Emit;
using Boardwright.Bench.Drying;
using Boardwright.Bench.Planning;
using Boardwright.Bench.Sawing;

// batching FOLDER SECONDS [PATTERN]: quality against best known results, not time.
if (args is ["batching", var folder, var seconds, .. var rest])
{
    BatchingBench.Run(folder, double.Parse(seconds, CultureInfo.InvariantCulture), rest.Length > 0 ? rest[0] : "*.dzn");
    return;
}

// drying step: an hour of many boards against the machine and other ways, in slices that a busy machine disturbs little.
if (args is ["drying", "step"])
{
    BoardStepBench.Run();
    return;
}

// drying yard [SVG]: the forecast of a whole yard by the hour. drying verify STACKS: quality of the forecasts on hidden stacks.
if (args is ["drying", "yard", .. var picture])
{
    YardBench.Run(picture.Length > 0 ? picture[0] : null);
    return;
}

// drying page: the forecast behind each stack's page of the demonstration, worked out anew.
if (args is ["drying", "page"])
{
    StackPageBench.Run();
    return;
}

// drying refine: the table of the method page.
if (args is ["drying", "refine"])
{
    RefinementBench.Run();
    return;
}

if (args is ["drying", "verify", var hidden])
{
    VerificationBench.Run(int.Parse(hidden, CultureInfo.InvariantCulture));
    return;
}

// yard-plan STACKS KILNS ORDERS SECONDS SEED...: quality of the yard's plan against its bound and two rules of thumb.
if (args is ["yard-plan", var stacks, var kilns, var orders, var limit, .. var seeds])
{
    YardPlanBench.Run(Whole(stacks), Whole(kilns), Whole(orders), Whole(limit), seeds.Select(Whole));
    return;
}

static int Whole(string text) => int.Parse(text, CultureInfo.InvariantCulture);

// sawing [LOGS VALUED [SVG]]: time and value of cutting plans against plain code and simpler practice, all in one run.
if (args is ["sawing", "one"])
{
    SawingBench.OneLog();
    return;
}

if (args is ["sawing", "value", var valued])
{
    SawingBench.Value(int.Parse(valued, CultureInfo.InvariantCulture));
    return;
}

if (args is ["sawing", "many", var many])
{
    SawingBench.ManyLogs(int.Parse(many, CultureInfo.InvariantCulture));
    return;
}

if (args is ["sawing", .. var sawing])
{
    int Count(int index, int usual) => sawing.Length > index ? int.Parse(sawing[index], CultureInfo.InvariantCulture) : usual;
    SawingBench.Run(Count(0, 1000), Count(1, 500), sawing.Length > 2 ? sawing[2] : null);
    return;
}

// Short and in process: the ratio to the plain baseline of the same run is what counts, never the bare time.
var job = Job.ShortRun.WithToolchain(InProcessEmitToolchain.Instance);
var config = ManualConfig.CreateEmpty()
    .AddJob(job)
    .AddDiagnoser(MemoryDiagnoser.Default)
    .AddColumnProvider(DefaultColumnProviders.Instance)
    .AddLogger(ConsoleLogger.Default)
    .AddExporter(BenchmarkDotNet.Exporters.MarkdownExporter.GitHub);
BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args, config);
