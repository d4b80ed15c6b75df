#pragma once

#include <cstdio>
#include <initializer_list>
#include <string_view>

/// A test that is one of several in its program, by its name; a list of them is an argument of runNamed.
#define SIPHONWRIGHT_NAMED(test)                                                                             \
    {                                                                                                        \
#test, test                                                                                          \
    }

namespace siphonwright::test {

struct NamedTest {
    std::string_view name;
    int (*run)(int argc, char** argv);
};

/// Run the test whose name is the first argument with the arguments behind it.
/// \return what it returns; 2 without such a test, with the names said
inline int runNamed(std::initializer_list<NamedTest> tests, int argc, char** argv)
{
    const std::string_view wanted = argc > 1 ? argv[1] : "";
    for (const NamedTest& test : tests) {
        if (test.name != wanted)
            continue;
        argv[1] = argv[0];
        return test.run(argc - 1, argv + 1);
    }
    std::fputs("the first argument has to be one of:\n", stderr);
    for (const NamedTest& test : tests)
        std::fprintf(stderr, "  %.*s\n", static_cast<int>(test.name.size()), test.name.data());
    return 2;
}

} // namespace siphonwright::test
