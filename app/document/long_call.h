#pragma once

#include <chrono>
#include <functional>
#include <future>
#include <thread>
#include <utility>

namespace siphonwright {

/// A call of the system that may not come back for a long time, as of a network drive that is gone. It runs
/// on a thread of its own, which is left behind when nobody wants to wait for it any longer: what it works
/// with must be its own, or live as long as the program.
template <class Result>
class LongCall {
public:
    explicit LongCall(std::function<Result()> call)
    {
        std::packaged_task<Result()> task(std::move(call));
        result_ = task.get_future(); // unlike that of std::async it does not wait when it is dropped
        std::thread(std::move(task)).detach();
    }

    /// Wait so long at most. \return whether it has come back
    bool isDone(std::chrono::milliseconds patience = std::chrono::milliseconds{0}) const
    {
        return result_.wait_for(patience) == std::future_status::ready;
    }
    /// Its result, once; waits for it.
    Result take() { return result_.get(); }

private:
    std::future<Result> result_;
};

} // namespace siphonwright
