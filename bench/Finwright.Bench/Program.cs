using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;
using Finwright.Bench;
using Finwright.Bench.References;

// "compare" holds our numerics against general-purpose programs.
if (args is ["compare", .. string[] names])
    return CompareRun.Run(names, Console.Out);

// --filter chooses the benchmarks; see bench/README.md. A benchmark that threw makes the run fail.
DryRun.IsOn = args.Contains("Dry", StringComparer.OrdinalIgnoreCase);
Summary[] summaries = [.. BenchmarkSwitcher.FromAssembly(System.Reflection.Assembly.GetExecutingAssembly()).Run(args)];
bool good = summaries.Length > 0
    && summaries.All(summary => !summary.HasCriticalValidationErrors && summary.Reports.All(report => report.Success));
return good ? 0 : 1;
