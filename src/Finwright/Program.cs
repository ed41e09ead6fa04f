using Finwright;
using Finwright.Terminal;

using CancellationTokenSource stop = new();
Console.CancelKeyPress += (_, pressed) =>
{
    // The first Ctrl-C lets the command put everything away; the second ends the process at once.
    if (stop.IsCancellationRequested)
        return;
    pressed.Cancel = true;
    stop.Cancel();
};
TextStreams streams = TextStreams.OfProcess();
return (int)(args.Length == 0 && DesktopStart.IsOne() ? DesktopStart.Run(streams, stop.Token) : CommandLine.Run(args, streams, stop.Token));
