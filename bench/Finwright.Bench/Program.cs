using BenchmarkDotNet.Reports;
using BenchmarkDotNet.Running;

// --filter chooses the benchmarks; see bench/README.md. A benchmark that threw makes the run fail.
Summary[] summaries = [.. BenchmarkSwitcher.FromAssembly(typeof(Program).Assembly).Run(args)];
bool good = summaries.Length > 0
    && summaries.All(summary => !summary.HasCriticalValidationErrors && summary.Reports.All(report => report.Success));
return good ? 0 : 1;
