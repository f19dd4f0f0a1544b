using BridgeForm.Mutation;

return args switch
{
    ["map", var folder, .. var classes] => Child.Map(folder, classes),
    ["run", var folder, .. var tests] => Child.Run(folder, tests),
    _ => Search.Run(Options.Of(args)),
};
