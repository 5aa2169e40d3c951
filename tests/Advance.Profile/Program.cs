using Advance.Profile;

// Which generic code the published program needs is seen by running one that was published without a profile:
//   dotnet publish src/Advance.Cli -c Release -r linux-x64 -p:WithProfile=false -o FOLDER
//   DOTNET_JitStdOutFile=LOG DOTNET_JitDisasmSummary=1 DOTNET_PerfMapEnabled=3 DOTNET_PerfMapJitDumpPath=. FOLDER/advance build sample-gigs/lantern-fair --out /tmp/package
//   dotnet run --project tests/Advance.Profile -- LOG perf-*.map FOLDER src/Advance.Cli/Startup.mibc
// Logs and maps of several runs may be put together, each kind in one file.
// A profile that has grown old does no harm: what it names and is gone is passed over, what it lacks is compiled when it is first run.

if (args is not [var log, var map, var folder, var profile])
{
    Console.Error.WriteLine("Advance.Profile LOG MAP FOLDER PROFILE: from what a published program compiled while it ran (LOG, MAP) writes what is to be compiled ahead.");
    return 2;
}

var published = new PublishedTypes(folder);
var writer = new ProfileWriter(published);
var mapped = new MappedTypes(File.ReadLines(map), published);
var taken = 0;
var left = new List<string>();
foreach (var method in File.ReadLines(log).Select(MethodName.InLine).OfType<MethodName>().Where(method => method.IsGeneric).DistinctBy(method => method.Text))
{
    var isTaken = false;
    foreach (var meant in mapped.Meant(method))
    {
        isTaken |= writer.Add(meant);
    }

    if (isTaken)
    {
        taken++;
    }
    else
    {
        left.Add(method.Text);
    }
}

File.WriteAllBytes(profile, writer.Finish());
Console.WriteLine($"{taken} methods taken, {left.Count} left to be compiled at run time.");
left.ForEach(method => Console.WriteLine($"  {method}"));
return 0;
