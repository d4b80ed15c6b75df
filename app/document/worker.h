#pragma once

#include "app/document/give_way.h"
#include "app/document/vector_state.h"

#include <condition_variable>
#include <functional>
#include <mutex>
#include <optional>
#include <stop_token>
#include <thread>
#include <utility>

namespace siphonwright {

/// Computes beside the window and after it: one thread, and one slot in which the latest job wins. A job that
/// is running when a newer one comes is stopped, and what it still says is not heard.
template <class Job, class Answer>
class Worker {
public:
    using Tell = std::function<void(Answer)>;
    using Work = std::function<void(Job job, const Tell& tell, const std::stop_token& stop)>;

    /// \param work on the thread; tells as often as it likes \param ready called on the thread when there is
    /// an answer to take
    Worker(Work work, std::function<void()> ready)
        : work_(std::move(work)),
          ready_(std::move(ready)),
          thread_([this](const std::stop_token& end) { run(end); })
    {}
    ~Worker()
    {
        thread_.request_stop();
        const std::lock_guard lock(mutex_);
        running_.request_stop();
    }
    Worker(const Worker&) = delete;
    Worker& operator=(const Worker&) = delete;

    void ask(Job job)
    {
        {
            const std::lock_guard lock(mutex_);
            waiting_ = std::move(job);
            answer_.reset();
            running_.request_stop();
        }
        wake_.notify_one();
    }
    /// Stop, and forget what was asked and answered.
    void halt()
    {
        const std::lock_guard lock(mutex_);
        waiting_.reset();
        answer_.reset();
        running_.request_stop();
    }
    /// The newest answer that was not taken yet.
    std::optional<Answer> take()
    {
        const std::lock_guard lock(mutex_);
        return std::exchange(answer_, std::nullopt);
    }

private:
    void run(const std::stop_token& end)
    {
        leaveVectorState();
        giveWay();
        while (true) {
            std::optional<Job> job;
            std::stop_source running;
            {
                std::unique_lock lock(mutex_);
                if (!wake_.wait(lock, end, [this] { return waiting_.has_value(); }) || end.stop_requested())
                    return;
                job = std::exchange(waiting_, std::nullopt);
                running_ = running;
            }
            const Tell tell = [&](Answer answer) {
                {
                    const std::lock_guard lock(mutex_);
                    if (running.stop_requested())
                        return;
                    answer_ = std::move(answer);
                }
                ready_();
            };
            work_(std::move(*job), tell, running.get_token());
        }
    }

    const Work work_;
    const std::function<void()> ready_;
    std::mutex mutex_;
    std::condition_variable_any wake_;
    std::optional<Job> waiting_;
    std::optional<Answer> answer_;
    std::stop_source running_{std::nostopstate};
    std::jthread thread_; ///< last: it starts when all else is there, and ends first
};

} // namespace siphonwright
