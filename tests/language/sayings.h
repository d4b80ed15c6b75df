#pragma once

#include "core/quantity/quantity.h"
#include "core/sketch/sketch.h"

#include <set>
#include <string>
#include <string_view>

/// What core says, gathered text by text: patterns, the words in their places, figures put into words.
class Sayings {
public:
    void add(std::string_view text)
    {
        if (!text.empty())
            texts_.emplace(text);
    }
    void add(const siphonwright::Message& message);
    template <class Messages>
    void addAll(const Messages& messages)
    {
        for (const auto& one : messages)
            add(one);
    }

    /// To try what mends a fault once for each rule: it takes long.
    bool isFirstOf(const std::string& rule) { return rules_.insert(rule).second; }

    const std::set<std::string>& texts() const { return texts_; }
    /// The sentences as they read, in either unit system.
    const std::set<std::string>& sentences() const { return sentences_; }

private:
    std::set<std::string> texts_;
    std::set<std::string> sentences_;
    std::set<std::string> rules_;
};

/// By which all parts are called, and a number: any other word of a sentence is the program's.
constexpr std::string_view users_word = "Qwx";
void callByUsersWord(siphonwright::Sketch& sketch);

/// All that is said of a job: on the level and on grades, of how it is filled and run, of the work and what
/// it takes, of its survey.
void saySketch(Sayings& sayings, const siphonwright::Sketch& sketch);
/// What its readings say, and what may be wrong with it: takes a second.
void sayDiagnosis(Sayings& sayings, const siphonwright::Sketch& sketch);
/// What is said of every job alike.
void sayBooks(Sayings& sayings);
